#pragma once

#include "app/theme/theme.h"
#include "core/airframe/ids.h"

#include <QWidget>

#include <optional>

class QKeyEvent;

namespace rig {

class Clock;
class Prompts;
class Records;

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
};

} // namespace rig
