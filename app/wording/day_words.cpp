#include "app/wording/day_words.h"

#include "core/day_entry.h"

#include <QDate>
#include <QRegularExpression>
#include <QStringList>

namespace rig {

namespace {

constexpr qsizetype kYearFigures = 4;

// How figures of a day follow each other: "d", "M" and "yyyy" with what stands between them.
struct DayOrder
{
    QStringList parts; // none where the month is written as a word
    QString between;

    QString format() const { return parts.join(between); }
};

DayOrder orderOf(const QLocale& locale)
{
    static const QRegularExpression kFigures{
        QStringLiteral("^(d+|M{1,2}|y+)([^dMy]+)(d+|M{1,2}|y+)\\2(d+|M{1,2}|y+)([^dMy].*)?$")};
    const auto found = kFigures.match(locale.dateFormat(QLocale::ShortFormat));
    if (!found.hasMatch())
        return {};
    DayOrder order{{found.captured(1), found.captured(3), found.captured(4)}, found.captured(2).trimmed()};
    for (QString& part : order.parts)
        if (part.startsWith(QLatin1Char('y')))
            part = QStringLiteral("yyyy");
    return order;
}

// The one part of `typed` that stands where `letter` does, with a leading nought where one is left out.
QString figuresAt(const DayOrder& order, const QStringList& typed, QChar letter, qsizetype figures)
{
    for (qsizetype i = 0; i < typed.size(); ++i)
        if (order.parts[i].startsWith(letter))
            return typed[i].trimmed().rightJustified(figures == kYearFigures ? 0 : figures, QLatin1Char('0'));
    return {};
}

} // namespace

std::optional<Day> readDay(const QString& typed, const QLocale& locale)
{
    if (const auto plain = parseDay(typed.toStdString()))
        return plain;
    const DayOrder order = orderOf(locale);
    const QStringList parts = order.parts.isEmpty() ? QStringList{} : typed.trimmed().split(order.between);
    if (parts.size() != order.parts.size())
        return std::nullopt;
    const QStringList figures{figuresAt(order, parts, QLatin1Char('y'), kYearFigures),
                              figuresAt(order, parts, QLatin1Char('M'), 2),
                              figuresAt(order, parts, QLatin1Char('d'), 2)};
    return parseDay(figures.join(QLatin1Char('-')).toStdString());
}

QString DayWords::example()
{
    const QDate day{2026, 5, 31};
    const QString plain = day.toString(Qt::ISODate);
    const QString format = orderOf(QLocale{}).format();
    const QString local = format.isEmpty() ? plain : QLocale{}.toString(day, format);
    return local == plain ? plain : tr("%1 or %2", "a day in two forms").arg(plain, local);
}

QString DayWords::hint() { return tr("Like %1.", "a day").arg(example()); }
QString DayWords::hintOrEmpty() { return tr("Like %1. May stay empty.", "a day").arg(example()); }
QString DayWords::missing() { return tr("Type the day, like %1.").arg(example()); }

QString DayWords::unread(const QString& typed)
{
    return tr("“%1” is no day that can be read for sure. Type it like %2.").arg(typed.trimmed(), example());
}

} // namespace rig
