#pragma once

#include "app/pages/annual/annual_presenter.h"
#include "app/pages/page.h"
#include "app/pages/period_choice.h"

class QBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace rig {

class AnnualPanel;
class FlowScroll;
class PanelColumns;
class PeriodBox;
class Pressable;
class Prompts;
class ReportPreview;
class ReviewTable;
class StandsOutCard;
class StatementBench;
enum class StatementKind;

// Before the annual: what stands out, every coupling ranked, and the panels that say why; each leads to
// Trends. Keys: S what stands out, O what lay outside, F a finding, Q a question, P period, M what the
// columns mean, R the report before it is written, Page Up and Page Down.
class AnnualPage : public Page
{
    Q_OBJECT

public:
    // All must outlive the page.
    AnnualPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId> airframe) override;
    void catchUp() override;
    void setLook(const Look& look) override;
    void leave() override; // the report is asked for anew
    QString leftUndone() const override;
    // One choice with other pages; it must outlive the page.
    void sharePeriod(PeriodChoice& choice) { m_period = &choice; }

signals:
    // With a reading where one was pressed.
    void trendWanted(CouplingId coupling, const std::optional<ReadingId>& reading);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeContent();
    QWidget* makeHead();
    QWidget* makeTableCard();
    QWidget* makePanels();
    void fitHead();
    void read();
    void choosePeriod(const PeriodOffer& offer);
    void display();
    void displayPanels();
    void showReport();
    void showTable();
    void showMessage(const QString& sentence);
    void showMeaning(bool shown);
    QWidget* makeChoices();
    QWidget* makeStatements(Records& records);
    void state(StatementKind kind);
    void endStating(const QString& sentence);
    bool isStating() const;
    const AnnualStory* storyAt(const QString& link) const;
    void openTrend(CouplingId coupling, const std::optional<ReadingId>& reading);
    void goTo(Pressable* link);
    QString focusedLink() const;
    void focusAgain(const QString& link);
    void comeBack();

    AnnualPresenter m_presenter;
    const Clock& m_clock;
    AnnualView m_view;
    std::optional<AirframeId> m_airframe;
    PeriodChoice m_ownPeriod;
    PeriodChoice* m_period = &m_ownPeriod;
    Look m_look;

    // Where a press led away from.
    struct Place
    {
        QString link; // empty: the table
        int scrolled = 0;
    };
    std::optional<Place> m_leftFrom;

    QStackedWidget* m_stack = nullptr;
    QLabel* m_message = nullptr;
    FlowScroll* m_scroll = nullptr;
    ReportPreview* m_preview = nullptr;
    StatementBench* m_statements = nullptr;
    QLabel* m_said = nullptr; // that a statement is kept
    QBoxLayout* m_head = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_counted = nullptr;
    PeriodBox* m_periods = nullptr;
    QPushButton* m_report = nullptr;
    StandsOutCard* m_standsOut = nullptr;
    ReviewTable* m_table = nullptr;
    QPushButton* m_meaning = nullptr;
    QLabel* m_meanings = nullptr;
    QLabel* m_neverSeen = nullptr;
    PanelColumns* m_panels = nullptr;
    AnnualPanel* m_shifts = nullptr;
    AnnualPanel* m_measurers = nullptr;
    AnnualPanel* m_outside = nullptr;
    AnnualPanel* m_questions = nullptr;
    AnnualPanel* m_gauges = nullptr;
    AnnualPanel* m_changes = nullptr;
    AnnualPanel* m_tooFew = nullptr;
    AnnualPanel* m_riggings = nullptr;
};

} // namespace rig
