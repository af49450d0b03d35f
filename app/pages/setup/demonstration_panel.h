#pragma once

#include "app/pages/setup/demonstration_card.h"
#include "app/theme/theme.h"
#include "core/airframe/ids.h"

#include <QWidget>

#include <optional>

class QKeyEvent;
class QLabel;

namespace rig {

class BaselineCouplings;
class BaselineReadings;
class FlowScroll;
class Prompts;

// A joint left part-seated on purpose, with its cautions, to learn where its gap then lies.
class DemonstrationPanel : public QWidget
{
    Q_OBJECT

public:
    // The first three outlive it.
    DemonstrationPanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

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
    void refresh();
    void showCouplings();
    void showSheet();
    QString lackOf() const;
    void keepReading(const GaugeReading& reading);
    void beginCorrection(const BaselineReadingRow& row);

    BaselineDayPresenter m_presenter;
    const Clock& m_clock;
    Prompts& m_prompts;
    std::optional<AirframeId> m_airframe;
    std::optional<CouplingId> m_coupling;
    BaselineDayView m_view;
    std::optional<DemonstrationSheet> m_sheet;
    DemonstrationWork m_work;

    BaselineCouplings* m_couplings = nullptr;
    FlowScroll* m_scroll = nullptr;
    QLabel* m_lack = nullptr;
    DemonstrationCard* m_card = nullptr;
    BaselineReadings* m_readings = nullptr;
};

} // namespace rig
