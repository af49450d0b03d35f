#include "app/wording/sentence_parts.h"

#include "app/wording/formats.h"

#include <QLocale>

namespace rig {

QString SentenceParts::capital(const QString& sentence)
{
    return sentence.isEmpty() ? sentence : sentence.at(0).toUpper() + sentence.mid(1);
}

QString SentenceParts::list(const QStringList& parts)
{
    if (parts.size() < 2)
        return parts.join(QString{});
    return tr("%1 and %2", "all but the last of a list, the last")
        .arg(parts.mid(0, parts.size() - 1).join(tr(", ", "between parts of a list")), parts.last());
}

QString SentenceParts::inFileName(const QString& name)
{
    QString plain = name;
    for (QChar& letter : plain)
        if (!letter.isLetterOrNumber() && letter != QLatin1Char('-') && letter != QLatin1Char('_'))
            letter = QLatin1Char('-');
    return plain;
}

QString SentenceParts::cell(const QString& heading, const QString& text, bool isStruck)
{
    if (text.isEmpty())
        return tr("%1: nothing", "heading of a column in which nothing stands").arg(heading);
    const QString line = QString{text}.replace(QLatin1Char('\n'), QLatin1Char(' '));
    return isStruck ? tr("%1: %2, struck", "heading of a column, what stands there").arg(heading, line)
                    : tr("%1: %2", "heading of a column, what stands there").arg(heading, line);
}

QString SentenceParts::days(const std::vector<Day>& days)
{
    constexpr std::size_t kMostNamed = 4;
    if (days.empty())
        return {};
    const auto monthOf = [](Day day) {
        const std::chrono::year_month_day date{day};
        return std::pair{date.year(), date.month()};
    };
    const QString last = Formats{}.day(days.back());
    if (days.size() > kMostNamed)
        return tr("%1 to %2", "days").arg(Formats{}.day(days.front()), last);
    QStringList named;
    for (std::size_t i = 0; i + 1 < days.size(); ++i)
        named << (monthOf(days[i]) == monthOf(days.back())
                      ? QLocale{}.toString(static_cast<unsigned>(std::chrono::year_month_day{days[i]}.day()))
                      : Formats{}.day(days[i]));
    named << last;
    return list(named);
}

} // namespace rig
