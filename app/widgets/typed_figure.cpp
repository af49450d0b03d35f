#include "app/widgets/typed_figure.h"

namespace rig {

namespace {

constexpr int kLongest = 12;

bool isPointOrComma(QChar c)
{
    return c == QLatin1Char('.') || c == QLatin1Char(',');
}

} // namespace

bool TypedFigure::begins(QChar c)
{
    const bool isDigit = c >= QLatin1Char('0') && c <= QLatin1Char('9');
    return isDigit || isPointOrComma(c) || QStringView{u"+-\u2212\u2013"}.contains(c);
}

bool TypedFigure::isOnItsWay() const
{
    return m_text.size() == 1 && isPointOrComma(m_text.front());
}

void TypedFigure::add(QChar c)
{
    if (m_refused)
        clear();
    if (m_text.size() < kLongest)
        m_text += c;
    else if (m_text.size() == kLongest)
        m_text += QChar{u'…'}; // what is left out is seen, and refused
}

void TypedFigure::takeBackLast()
{
    m_text.chop(1);
    m_refused = false;
}

void TypedFigure::clear()
{
    m_text.clear();
    m_refused = false;
}

} // namespace rig
