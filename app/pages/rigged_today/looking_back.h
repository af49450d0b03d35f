#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"

#include <QObject>
#include <QString>

#include <optional>

class QTimer;

namespace rig {

// How the couplings have moved, worked out once for each record and when no key waits: it needs the whole
// history.
class LookingBack : public QObject
{
    Q_OBJECT

public:
    // `presenter` outlives it.
    LookingBack(const RiggedTodayPresenter& presenter, QObject* parent);

    // What the sheet's coupling shows, for the first person; empty while it is not worked out, which is then
    // seen to.
    QString movementOf(const CouplingSheet& sheet, RecordId record);
    // Works it out for that record.
    Outcome lookBack(AirframeId airframe, RecordId record);

signals:
    void isDue();

private:
    const RiggedTodayPresenter& m_presenter;
    QTimer* m_waiting = nullptr;
    MovementsTold m_told; // as they stood when the work on m_record began here
    std::optional<RecordId> m_record;
};

} // namespace rig
