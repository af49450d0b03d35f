#pragma once

#include <QString>
#include <QWidget>

#include <gtest/gtest.h>
#include <ostream>
#include <string>

namespace rig::test {

// How somebody types: looking up after every key, or ahead of what the screen shows.
enum class Pace { KeyByKey, Ahead };

inline std::ostream& operator<<(std::ostream& out, Pace pace)
{
    return out << (pace == Pace::Ahead ? "typed ahead" : "key by key");
}

// For journeys that go the same way at either pace: TestWithParam<Pace>.
inline const auto kPaces = testing::Values(Pace::KeyByKey, Pace::Ahead);
inline std::string nameOfPace(const testing::TestParamInfo<Pace>& pace)
{
    return pace.param == Pace::Ahead ? "TypedAhead" : "KeyByKey";
}

// Somebody at the keyboard and the mouse of a window. What is pressed goes the way of the window system, as
// real keys and clicks do, to whatever has the focus when its turn comes. KeyByKey turns the event loop after
// each. Ahead does not, as when keys queue up while the program is busy: no timer runs and nothing posted is
// done between them, until somebody looks.
class Typist
{
public:
    explicit Typist(QWidget& window, Pace pace = Pace::KeyByKey) : m_window{window}, m_pace{pace} {}

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void type(const QString& text); // '\n' is Enter, ↑ ↓ ← → are the arrows
    void click(const QWidget& part);

    // Until all that was pressed is taken. Whoever looks at the screen or into the file looks first.
    static void look();

    // To a part of the window, as Tab would.
    void goTo(const QString& name);
    void tabTo(const QString& name);
    QString focused() const;
    int presses() const { return m_presses; } // of keys, so far

private:
    void send(int key, const QString& text, Qt::KeyboardModifiers with);

    QWidget& m_window;
    Pace m_pace;
    int m_presses = 0;
    int m_clickedAt = 0; // milliseconds; far enough apart that two clicks are never a double one
};

} // namespace rig::test
