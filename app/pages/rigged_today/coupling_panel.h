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
class LeafRow;
class StopCard;
class TrendWidget;
class VerdictCard;

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
    void turnAsked(rig::Turn turn);

private:
    void buildTop(QVBoxLayout* layout);
    void buildLook(QVBoxLayout* layout);
    void buildMeasure(QVBoxLayout* layout);
    void buildPull(QVBoxLayout* layout);
    QuestionTile* addTile(QLayout* layout, CheckKind kind, const char* name, AnswerChoice choice);
    void buildBottom(QVBoxLayout* layout);
    void fillChoices(const RiggedTodayView& view, const CouplingSheet& sheet);
    void showQuestions(const CouplingSheet& sheet);
    void showMeasure(const CouplingSheet& sheet);
    void showStruck(const RiggedTodayView& view, const CouplingSheet& sheet);
    void showBottom(const CouplingSheet& sheet);
    QWidget* nextThing() const;
    void showStop(const RiggedTodayView& view, const CouplingSheet& sheet);
    std::optional<Verdict> verdictShown(const Judgement& judgement) const;
    QString whyNoFigure() const;
    void chooseReading(const GaugeReading& reading);
    QuestionTile* tile(CheckKind kind) const { return m_tiles[static_cast<std::size_t>(kind)]; }

    CouplingSheet m_sheet;
    CouplingStanding m_standing; // before what is pressed and not yet saved
    FlowScroll* m_scroll = nullptr;
    QString m_callName;
    QString m_callPhone;
    bool m_leavesOpen = false;

    QLabel* m_title = nullptr;
    QLabel* m_access = nullptr;
    QLabel* m_personLabel = nullptr;
    ChoiceBox* m_person = nullptr;
    ChoiceBox* m_gauge = nullptr;
    QLabel* m_told = nullptr; // what is known of the joint before anything is done at it
    QLabel* m_notice = nullptr;
    StopCard* m_stop = nullptr;
    std::array<QuestionTile*, 5> m_tiles{};
    GapStripWidget* m_strip = nullptr;
    QLabel* m_leafLabel = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_leafNote = nullptr;
    VerdictCard* m_verdict = nullptr;
    QLabel* m_struck = nullptr;
    QPushButton* m_again = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_strike = nullptr;
    QPushButton* m_turn = nullptr;
    QPushButton* m_next = nullptr;
    QWidget* m_historyBox = nullptr;
    TrendWidget* m_history = nullptr;
};

} // namespace rig
