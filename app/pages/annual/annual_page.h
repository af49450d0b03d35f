#pragma once

#include "app/pages/annual/annual_presenter.h"
#include "app/pages/page.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace rig {

class AnnualPanel;
class FlowScroll;
class PanelColumns;
class Prompts;
class ReportPreview;
class ReviewTable;
class StandsOutCard;

// Before the annual: what stands out, every coupling ranked, and the panels that say why. Keys: P period, M
// what the columns mean, R the report before it is written, Page Up and Page Down.
class AnnualPage : public Page
{
    Q_OBJECT

public:
    // All must outlive the page.
    AnnualPage(const Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId> airframe) override;
    void catchUp() override { showAirframe(m_airframe); }
    void setLook(const Look& look) override;
    void leave() override; // the report is asked for anew

signals:
    // The period where it is not the current one.
    void trendWanted(const std::optional<ReviewPeriod>& period, CouplingId coupling);

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
    void read(const std::optional<ReviewPeriod>& period);
    void display();
    void displayPanels();
    void showReport();
    void showTable();
    void showMessage(const QString& sentence);
    void showMeaning(bool shown);

    AnnualPresenter m_presenter;
    const Clock& m_clock;
    AnnualView m_view;
    std::optional<AirframeId> m_airframe;
    std::optional<ReviewPeriod> m_period; // as chosen; empty: the current one
    Look m_look;

    QStackedWidget* m_stack = nullptr;
    QLabel* m_message = nullptr;
    FlowScroll* m_scroll = nullptr;
    ReportPreview* m_preview = nullptr;
    QBoxLayout* m_head = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_counted = nullptr;
    QComboBox* m_periods = nullptr;
    QPushButton* m_report = nullptr;
    StandsOutCard* m_standsOut = nullptr;
    ReviewTable* m_table = nullptr;
    QPushButton* m_meaning = nullptr;
    QLabel* m_meanings = nullptr;
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
