#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/theme/theme.h"
#include "app/widgets/question_tile.h"

#include <QWidget>

#include <array>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class FlowScroll;
class GapStripWidget;
class JointPlayCard;
class LeafRow;
class StopCard;
class TrendWidget;
class VerdictCard;
class WrapLayout;

// One coupling and one person: look, measure, pull. It shows a sheet and says what the user did.
class CouplingPanel : public QWidget
{
    Q_OBJECT

public:
    explicit CouplingPanel(QWidget* parent = nullptr);

    void display(const RiggedTodayView& view, const CouplingSheet& sheet, const QString& nextText);
    void setLook(const Look& look);

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

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildTop(QVBoxLayout* layout);
    void buildCautions(QVBoxLayout* layout);
    void buildLook(QVBoxLayout* layout);
    void buildMeasure(QVBoxLayout* layout);
    void buildPull(QVBoxLayout* layout);
    QuestionTile* addTile(QLayout* layout, CheckKind kind, const char* name, AnswerChoice choice);
    void buildBottom(QVBoxLayout* layout);
    void fillChoices(const RiggedTodayView& view, const CouplingSheet& sheet);
    void showQuestions(const CouplingSheet& sheet);
    void showLook(const CouplingSheet& sheet);
    void toggleLook();
    void showPull(const CouplingSheet& sheet);
    void showPart(CheckKind kind, const CouplingSheet& sheet, bool open);
    void showWhatIsThere(const CouplingSheet& sheet);
    void showMeasure(const CouplingSheet& sheet);
    void showStruck(const RiggedTodayView& view, const CouplingSheet& sheet);
    void showBottom(const RiggedTodayView& view, const CouplingSheet& sheet);
    void placeHistory();
    QWidget* nextThing() const;
    void showStop(const RiggedTodayView& view, const CouplingSheet& sheet);
    std::optional<Verdict> verdictShown(const Judgement& judgement) const;
    QString whyNoFigure() const;
    void chooseReading(const GaugeReading& reading);
    bool hasGapHere() const { return m_sheet.flow.asks.parts.gap; }
    QuestionTile* tile(CheckKind kind) const { return m_tiles[static_cast<std::size_t>(kind)]; }

    const QObject* m_pressed = nullptr; // the last one, by mouse or touch
    CouplingSheet m_sheet;
    CouplingStanding m_standing; // before what is pressed and not yet saved
    FlowScroll* m_scroll = nullptr;
    QString m_callName;
    QString m_callPhone;
    bool m_leavesOpen = false;
    bool m_isLookWanted = false; // although it is answered

    QLabel* m_title = nullptr;
    QLabel* m_access = nullptr;
    QLabel* m_personLabel = nullptr;
    QLabel* m_gaugeLabel = nullptr;
    ChoiceBox* m_person = nullptr;
    ChoiceBox* m_gauge = nullptr;
    QLabel* m_told = nullptr; // what is known of the joint before anything is done at it
    QLabel* m_notice = nullptr;
    StopCard* m_stop = nullptr;
    std::array<QuestionTile*, kCheckKinds.size()> m_tiles{};
    QWidget* m_look = nullptr;
    QWidget* m_looked = nullptr; // the same in one line, once it is answered
    QLabel* m_lookedText = nullptr;
    QPushButton* m_lookAgain = nullptr;
    QLabel* m_noGap = nullptr;
    GapStripWidget* m_strip = nullptr;
    QLabel* m_leafLabel = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_leafNote = nullptr;
    VerdictCard* m_verdict = nullptr;
    QLabel* m_struck = nullptr;
    QPushButton* m_again = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_strike = nullptr;
    QPushButton* m_play = nullptr;
    QPushButton* m_turn = nullptr;
    QPushButton* m_next = nullptr;
    WrapLayout* m_pullRow = nullptr;
    JointPlayCard* m_playCard = nullptr;
    QLabel* m_plays = nullptr;
    QWidget* m_historyBox = nullptr;
    bool m_isTall = false;
    double m_scale = 1; // of the text
    TrendWidget* m_history = nullptr;
};

} // namespace rig
