#include "app/window/remembered.h"

#include "core/airframe/ids.h"

#include <QSettings>

#include <algorithm>

namespace rig {

namespace {

QString airframeKey(const QString& path)
{
    return settingOf(QStringLiteral("lastAirframe"), path);
}

QString learnerKey(AirframeId airframe)
{
    return QStringLiteral("learner/") + QString::fromStdString(textOf(airframe.bytes));
}

template <typename IdType> std::optional<IdType> idAt(const QString& key)
{
    const auto id = idFromText(QSettings{}.value(key).toString().toStdString());
    return id ? std::optional{IdType{*id}} : std::nullopt;
}

template <typename IdType> void keep(const QString& key, IdType id)
{
    QSettings{}.setValue(key, QString::fromStdString(textOf(id.bytes)));
}

} // namespace

QString settingOf(const QString& what, const QString& path)
{
    return what + QLatin1Char('/') + QString{path}.replace('/', '|');
}

std::optional<AirframeId> lastAirframeIn(const QString& path, std::span<const Airframe> airframes)
{
    if (airframes.empty())
        return std::nullopt;
    const auto last = idAt<AirframeId>(airframeKey(path));
    const auto found =
        std::ranges::find_if(airframes, [&last](const Airframe& one) { return one.id == last; });
    return found == airframes.end() ? airframes.front().id : found->id;
}

void rememberAirframe(const QString& path, AirframeId airframe)
{
    keep(airframeKey(path), airframe);
}

LearnerMemory rememberedLearners()
{
    return {[](AirframeId airframe) { return idAt<PersonId>(learnerKey(airframe)); },
            [](AirframeId airframe, PersonId person) { keep(learnerKey(airframe), person); }};
}

} // namespace rig
