#pragma once

#include "app/pages/rigged_today/control_check_presenter.h"
#include "app/theme/theme.h"
#include "app/widgets/question_tile.h"

#include <QWidget>

#include <array>
#include <functional>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class ChoiceTile;
class FigureSection;
class FlowScroll;
class PersonNote;
class StopCard;
class SurfaceChips;

// The control check: two people, one surface after another. It shows the surface and the people of the
// session and says what the user did; what is measured it keeps by its own presenter.
class ControlCheckPanel : public QWidget
{
    Q_OBJECT

public:
    // Both outlive it.
    ControlCheckPanel(Records& records, const Clock& clock, QWidget* parent = nullptr);

    // `view` has a record to work on. `onward`: what Enter leads to after the last surface.
    void display(const RiggedTodayView& view, const RiggingSession& session, const QString& onward);
    void setLook(const Look& look);
    // Asked before the panel writes by itself: whether what it shows is still what the file holds.
    void askBeforeWriting(std::function<bool()> mayWrite) { m_mayWrite = std::move(mayWrite); }
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);

signals:
    void answered(rig::SurfaceCheckKind kind, rig::Answer answer);
    void called(const rig::SurfaceCall& call);
    void peopleChosen(const rig::CheckPeople& people);
    void surfaceChosen(rig::SurfaceId surface);
    void onwardAsked();
    void changed(); // a fact was added here
    void problemArose(const rig::Problem& problem);

private:
    void buildTop(QVBoxLayout* layout);
    void buildTiles(QVBoxLayout* layout);
    void buildBottom(QVBoxLayout* layout);
    QWidget* buildNone();
    void beginSurface();
    void showSheet();
    void showPeople();
    QString whyStopped() const;
    QString whatIsAsked() const;
    void showTiles();
    void showCallTile(SurfaceCheckKind way);
    void showCall();
    void answer(SurfaceCheckKind kind, Answer answer);
    void pressCall(SurfaceCheckKind way, std::size_t option);
    bool isShown(SurfaceCheckKind kind) const;
    bool isOpen(SurfaceCheckKind kind) const;
    QWidget* tileOf(SurfaceCheckKind kind) const;
    bool takeCall(const QKeyEvent& event, SurfaceCheckKind way);
    void keep(MeasureKind kind, DeflectionUnit unit, const QString& typed);
    void addUsual();
    void bringIntoSight();
    bool mayTry() const;
    bool isLeftAlone(const SurfaceProgress& one) const;
    bool isStopped() const { return m_sheet.isStopped(); }
    bool takeChooserKey(const QKeyEvent& event);
    bool holdsForTheStop();

    ControlCheckPresenter m_presenter;
    std::function<bool()> m_mayWrite = [] { return true; };
    RiggedTodayView m_view;
    RiggingSession m_session;
    QString m_onward;
    SurfaceSheet m_sheet;
    bool m_isStopRead = false;   // Enter was pressed on it once: the next one leaves it
    bool m_lastMeasured = false; // the figures stay in sight until the next answer

    FlowScroll* m_scroll = nullptr;
    QWidget* m_none = nullptr;
    QPushButton* m_usual = nullptr;
    QWidget* m_check = nullptr;
    QLabel* m_title = nullptr;
    ChoiceBox* m_atSurface = nullptr;
    ChoiceBox* m_inCockpit = nullptr;
    PersonNote* m_atSurfaceStands = nullptr;
    PersonNote* m_inCockpitStands = nullptr;
    SurfaceChips* m_chips = nullptr;
    QLabel* m_notice = nullptr;
    QWidget* m_callCard = nullptr;
    QLabel* m_callHeading = nullptr;
    QLabel* m_call = nullptr;
    StopCard* m_stop = nullptr;
    std::array<QuestionTile*, 11> m_tiles{};
    std::array<ChoiceTile*, 2> m_callTiles{}; // one way, the other
    FigureSection* m_figures = nullptr;
    QLabel* m_keys = nullptr;
    QPushButton* m_next = nullptr;
};

} // namespace rig
