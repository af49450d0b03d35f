#include "app/pages/rigged_today/looking_back.h"

#include <QTimer>

namespace rig {

namespace {

constexpr int kLookBackAfter = 300; // milliseconds without a key

} // namespace

LookingBack::LookingBack(const RiggedTodayPresenter& presenter, QObject* parent)
    : QObject{parent}, m_presenter{presenter}, m_waiting{new QTimer{this}}
{
    m_waiting->setSingleShot(true);
    m_waiting->setInterval(kLookBackAfter);
    connect(m_waiting, &QTimer::timeout, this, &LookingBack::isDue);
}

QString LookingBack::movementOf(const CouplingSheet& sheet, RecordId record)
{
    if (m_record != record) {
        m_told.clear();
        m_record.reset();
        m_waiting->start();
        return {};
    }
    const auto told = m_told.find(sheet.coupling.id);
    // The second person works without what the first has read.
    return told != m_told.end() && sheet.turn == Turn::First ? told->second : QString{};
}

Outcome LookingBack::lookBack(AirframeId airframe, RecordId record)
{
    auto told = m_presenter.movements(airframe);
    if (!told)
        return told.problem();
    m_told = std::move(told).value();
    m_record = record;
    return Done{};
}

} // namespace rig
