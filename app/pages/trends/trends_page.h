#pragma once

#include "app/pages/page.h"
#include "app/pages/period_choice.h"
#include "app/pages/trends/trends_presenter.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QShortcut;
class QSplitter;
class QStackedWidget;

namespace rig {

class AircraftPanel;
class ChartPanel;
class CouplingList;
class PeriodBox;
class ReadingsTable;
class StatementBench;
enum class StatementKind;

// Every coupling on its own band at the left; the chosen one large, by date or by rigging, with the table of
// the same readings under it; or all of them together. Keys: D by date, R by rigging, P period, F a finding,
// Q a question, T table, A all together, Page Up and Page Down where the text is too large for the window.
class TrendsPage : public Page
{
    Q_OBJECT

public:
    // Both must outlive the page.
    TrendsPage(Records& records, const Clock& clock, QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId> airframe) override;
    void catchUp() override;
    void setLook(const Look& look) override;
    // Looks back on a period, on one coupling where one is named; without a period up to today.
    void lookBack(const std::optional<PeriodOffer>& period, std::optional<CouplingId> coupling);
    // For somebody who comes from Before the annual and will go back there; `reading` is chosen.
    void visit(CouplingId coupling, const std::optional<ReadingId>& reading);
    // One choice with other pages; it must outlive the page.
    void sharePeriod(PeriodChoice& choice) { m_period = &choice; }
    QString leftUndone() const override;
    void leave() override; // the way back is taken, or no longer wanted

signals:
    void annualWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeHead();
    QWidget* makeCentre();
    void connectParts();
    void display();
    void chooseCoupling(CouplingId coupling);
    void chooseAxis(TrendAxis axis);
    void showTable(bool shown);
    void askTable(bool shown); // by the user
    void showAircraft(bool shown);
    std::optional<std::size_t> chosenIndex() const;
    void showMessage(const QString& sentence);
    QWidget* makeStatements(Records& records);
    void state(StatementKind kind);
    void endStating(const QString& sentence);
    void showBack();
    void lookAtPeriod();
    void chooseReading(ReadingId reading);

    TrendsPresenter m_presenter;
    const Clock& m_clock;
    TrendsView m_view;
    std::optional<AirframeId> m_airframe;
    PeriodChoice m_ownPeriod;
    PeriodChoice* m_period = &m_ownPeriod;
    std::optional<std::pair<CouplingId, PeriodOffer>> m_lookedAt; // the chart was brought there
    std::optional<CouplingId> m_chosen;
    bool m_isAircraft = false; // all couplings together
    bool m_isVisit = false;    // from Before the annual
    TrendAxis m_axis = TrendAxis::ByRigging;
    Look m_look;
    bool m_wasShown = false;

    CouplingList* m_list = nullptr;
    QStackedWidget* m_stack = nullptr;
    QScrollArea* m_scroll = nullptr;
    QSplitter* m_splitter = nullptr;
    ChartPanel* m_panel = nullptr;
    AircraftPanel* m_aircraft = nullptr;
    QPushButton* m_backToAnnual = nullptr;
    QPushButton* m_backToToday = nullptr;
    PeriodBox* m_periods = nullptr;
    QShortcut* m_backByKey = nullptr;
    QLabel* m_closed = nullptr; // what is kept back from the second person, and how it opens
    QLabel* m_backSaid = nullptr;
    ReadingsTable* m_table = nullptr;
    QWidget* m_tableRoom = nullptr;
    QLabel* m_message = nullptr;
    StatementBench* m_statements = nullptr;
    QPushButton* m_finding = nullptr;
    QPushButton* m_ask = nullptr;
    QLabel* m_said = nullptr; // that a statement is kept
};

} // namespace rig
