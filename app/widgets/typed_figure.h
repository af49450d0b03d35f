#pragma once

#include <QString>

namespace rig {

// What is typed before Enter takes it. Only a figure or a sign begins it, and whatever else comes between
// stands in it: “-1”, “0y5” or a figure too long to show is seen and refused, never read as something near
// it.
class TypedFigure
{
public:
    static bool begins(QChar c);

    const QString& text() const { return m_text; }
    bool isEmpty() const { return m_text.isEmpty(); }
    bool isOnItsWay() const; // no figure yet, and nothing wrong so far

    void add(QChar c);
    void takeBackLast();
    void clear();
    void refuse() { m_refused = true; } // stays in sight; the next figure starts anew
    bool isRefused() const { return m_refused; }

private:
    QString m_text;
    bool m_refused = false;
};

} // namespace rig
