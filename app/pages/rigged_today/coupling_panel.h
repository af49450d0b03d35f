#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/theme/theme.h"
#include "app/widgets/photo_cover.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace rig {

class CouplingButtons;
class CouplingHead;
class CouplingQuestions;
class FlowScroll;
class GapPart;
class JointPlayCard;
class PersonNote;
class StopCard;
class TrendWidget;
class WrapLayout;

// One coupling and one person: look, measure, pull. It shows a sheet and says what the user did.
class CouplingPanel : public QWidget
{
    Q_OBJECT

public:
    explicit CouplingPanel(QWidget* parent = nullptr);

    void display(const RiggedTodayView& view, const CouplingSheet& sheet, const QString& nextText);
    void setLook(const Look& look);
    // Of the sheet that is displayed; none where there is no photo.
    void showPhotos(std::vector<PhotoCover::Shown> photos);

    // The verdict, at once and before anything is saved.
    // Without a judgement it is one as the joint was found.
    void showReading(const GaugeReading& reading, const std::optional<Judgement>& judgement);
    void showNotSaved();
    // How the coupling has moved, worked out after the sheet was shown.
    void showMovement(const QString& sentence);
    void showNotice(const QString& sentence);
    // Takes back what was typed of a figure. False when nothing was.
    bool clearFigure();
    // The card for joint play; false when it was not open.
    bool closePlay();

    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);
    // The sentence, with why the joint begins anew before it where it does.
    QString behindWhatWentBefore(const QString& sentence) const;

signals:
    void answered(rig::CheckKind kind, rig::Answer answer);
    void readingChosen(const rig::GaugeReading& reading);
    void personChosen(rig::PersonId person);
    void gaugeChosen(rig::GaugeId gauge);
    void measureAgainAsked();
    void correctionAsked();
    void strikeAsked();
    void nextAsked();
    void playFelt(const rig::PlayFound& along, const rig::PlayFound& across, const QString& note);
    void turnAsked(rig::Turn turn);
    // What is typed on without a look at the screen was meant for something else.
    void restIsLost();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildCautions(QVBoxLayout* layout);
    void buildPull(QVBoxLayout* layout);
    void connectParts();
    void showStop(const RiggedTodayView& view);
    void showPlays(const RiggedTodayView& view);
    void placeHistory();
    void sizePhoto();
    void bringIntoSight();
    bool enlarge(); // the photos; false where there are none
    QWidget* nextThing() const;
    QString firstThing() const;
    QString whatIsAsked() const;
    QString whatWentBefore() const;
    bool isStoppedByAnAnswer() const; // in this record
    bool tellsOfASlip(const QKeyEvent& event);
    bool takeAnswer(Answer answer);
    bool holdsForTheStop();
    bool goOn();
    bool hasGapHere() const { return m_sheet.flow.asks.parts.gap; }

    const QObject* m_pressed = nullptr; // the last one, by mouse or touch
    CouplingSheet m_sheet;
    bool m_isFromPaper = false;
    FlowScroll* m_scroll = nullptr;
    CouplingHead* m_head = nullptr;
    QLabel* m_access = nullptr;
    PersonNote* m_standing = nullptr; // of whoever works here
    QLabel* m_told = nullptr;         // what is known of the joint before anything is done at it
    QLabel* m_notice = nullptr;
    StopCard* m_stop = nullptr;
    CouplingQuestions* m_questions = nullptr;
    GapPart* m_gap = nullptr;
    WrapLayout* m_pullRow = nullptr;
    JointPlayCard* m_playCard = nullptr;
    QLabel* m_plays = nullptr;
    QLabel* m_esc = nullptr; // what Esc does here
    QWidget* m_historyBox = nullptr;
    TrendWidget* m_history = nullptr;
    bool m_isStopRead = false;   // Enter was pressed on it once: the next one leaves it
    bool m_isVerdictNew = false; // nothing was answered since the reading
    bool m_isTall = false;
    Look m_look;
    std::vector<PhotoCover::Shown> m_photos;
    CouplingButtons* m_buttons = nullptr;
};

} // namespace rig
