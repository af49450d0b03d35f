#pragma once

#include "app/pages/setup/baseline_work.h"
#include "app/theme/theme.h"
#include "core/airframe/ids.h"

#include <QWidget>

#include <optional>

class QKeyEvent;
class QLabel;

namespace rig {

class BaselineCouplings;
class BaselineCycleCard;
class BaselineFreeze;
class BaselineReadings;
class FlowScroll;
class Prompts;

// Baseline day: cycles of disconnect, clean, connect, confirm, read, with the band narrowing beside them.
class BaselinePanel : public QWidget
{
    Q_OBJECT

public:
    // The first three outlive it.
    BaselinePanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    // Reads the facts anew.
    void showAirframe(std::optional<AirframeId> airframe);
    void setLook(const Look& look);
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);

signals:
    void problemArose(const QString& sentence);
    void changed(); // a fact was added

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* buildSheet();
    void connectParts();
    void openAtTheUsual();
    void refresh();
    void showCouplings();
    void showSheet();
    QString lackOf() const;
    void chooseCoupling(CouplingId coupling);
    void choosePerson(std::optional<PersonId> person);
    void keepReading(const GaugeReading& reading);
    void keepCorrection(const GaugeReading& reading);
    void beginCorrection(const BaselineReadingRow& row);
    void exclude(const BaselineReadingRow& row, PersonId by);
    void freeze(PersonId first, PersonId second);
    void report(const Outcome& outcome);

    BaselineDayPresenter m_presenter;
    const Clock& m_clock;
    Prompts& m_prompts;
    std::optional<AirframeId> m_airframe;
    std::optional<CouplingId> m_coupling;
    BaselineDayView m_view;
    std::optional<BaselineSheet> m_sheet;
    BaselineWork m_work;

    BaselineCouplings* m_couplings = nullptr;
    FlowScroll* m_scroll = nullptr;
    QLabel* m_lack = nullptr;
    BaselineCycleCard* m_cycle = nullptr;
    BaselineReadings* m_readings = nullptr;
    BaselineFreeze* m_freeze = nullptr;
};

} // namespace rig
