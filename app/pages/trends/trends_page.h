#pragma once

#include "app/pages/page.h"
#include "app/pages/trends/trends_presenter.h"

class QLabel;
class QScrollArea;
class QSplitter;
class QStackedWidget;

namespace rig {

class AircraftPanel;
class ChartPanel;
class CouplingList;
class ReadingsTable;

// Every coupling on its own band at the left; the chosen one large, by date or by rigging, with the table of
// the same readings under it; or all of them together. Keys: D by date, R by rigging, T table, A all
// together, Page Up and Page Down where the text is too large for the window.
class TrendsPage : public Page
{
    Q_OBJECT

public:
    // Both must outlive the page.
    TrendsPage(const Records& records, const Clock& clock, QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId> airframe) override;
    void catchUp() override { showAirframe(m_airframe); }
    void setLook(const Look& look) override;
    // Looks back on a period, on one coupling where one is named; without a period up to today.
    void lookBack(const std::optional<ReviewPeriod>& period, std::optional<CouplingId> coupling);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeBack();
    QWidget* makeCentre();
    void connectParts();
    void display();
    void chooseCoupling(CouplingId coupling);
    void chooseAxis(TrendAxis axis);
    void showTable(bool shown);
    void showAircraft(bool shown);
    std::optional<std::size_t> chosenIndex() const;
    void showMessage(const QString& sentence);

    TrendsPresenter m_presenter;
    const Clock& m_clock;
    TrendsView m_view;
    std::optional<AirframeId> m_airframe;
    std::optional<ReviewPeriod> m_period; // empty: since the last annual
    std::optional<CouplingId> m_chosen;
    bool m_isAircraft = false; // all couplings together
    TrendAxis m_axis = TrendAxis::ByRigging;
    Look m_look;
    bool m_wasShown = false;

    CouplingList* m_list = nullptr;
    QStackedWidget* m_stack = nullptr;
    QScrollArea* m_scroll = nullptr;
    QSplitter* m_splitter = nullptr;
    ChartPanel* m_panel = nullptr;
    AircraftPanel* m_aircraft = nullptr;
    QWidget* m_back = nullptr;  // says which period is looked back on
    QLabel* m_closed = nullptr; // what is kept back from the second person, and how it opens
    QLabel* m_backSaid = nullptr;
    ReadingsTable* m_table = nullptr;
    QWidget* m_tableRoom = nullptr;
    QLabel* m_message = nullptr;
};

} // namespace rig
