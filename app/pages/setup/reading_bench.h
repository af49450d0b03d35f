#pragma once

#include "app/pages/setup/reading_card.h"

#include <QWidget>

namespace rig {

class BaselineCouplings;
class BaselineReadings;
class FlowScroll;

// The couplings of an airframe at the left; at the right the card of the chosen one and its readings.
// Baseline day and the part-seated demonstration differ in the card that is handed to it.
class ReadingBench : public QWidget
{
    Q_OBJECT

public:
    // Reads the facts anew.
    void showAirframe(std::optional<AirframeId> airframe);
    void setLook(const Look& look) { m_card->setLook(look); }
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);
    // A figure is begun and not taken.
    bool hasTyped() const { return m_card->hasTyped(); }

signals:
    void problemArose(const QString& sentence);
    void changed(); // a fact was added

protected:
    // It takes over both.
    ReadingBench(const BenchTools& tools, ReadingCard* card, BaselineReadings* readings, QWidget* parent);

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
    void chooseCoupling(CouplingId coupling);
    void correct(const BaselineReadingRow& row);
    void exclude(const BaselineReadingRow& row, PersonId by);
    void excludeFor(ReadingId reading, PersonId by, const QString& reason);
    void say(const Problem& problem);

    BenchTools m_tools;
    std::optional<AirframeId> m_airframe;
    std::optional<CouplingId> m_coupling;
    BaselineDayView m_view;

    BaselineCouplings* m_couplings = nullptr;
    FlowScroll* m_scroll = nullptr;
    QLabel* m_lack = nullptr;
    QLabel* m_withoutGap = nullptr;
    ReadingCard* m_card = nullptr;
    BaselineReadings* m_readings = nullptr;
};

} // namespace rig
