#include "app/wording/wide_words.h"

#include <QLatin1String>

#include <algorithm>

namespace rig {

namespace {

constexpr int kPercentLonger = 40;

// What is no sentence: a key of the keyboard, a form of dates, what stands between the parts of a list.
bool isNoSentence(const QString& text, const QString& note)
{
    return note.startsWith(QLatin1String("key")) || note.startsWith(QLatin1String("QLocale")) ||
           std::none_of(text.begin(), text.end(), [](QChar c) { return c.isLetter(); });
}

} // namespace

QString WideWords::translate(const char* context, const char* source, const char* note, int n) const
{
    const QString plural = m_plurals.translate(context, source, note, n);
    const QString text = plural.isEmpty() ? QString::fromUtf8(source) : plural;
    if (isNoSentence(text, QString::fromUtf8(note)))
        return text;
    const auto more = std::max<qsizetype>(1, text.size() * kPercentLonger / 100 - 2);
    QString pad;
    while (pad.size() < more)
        pad += pad.size() % 7 == 6 ? u' ' : u'o'; // words that a line can break between
    return u'[' + text + u' ' + pad + u']';
}

} // namespace rig
