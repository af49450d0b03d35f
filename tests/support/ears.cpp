#include "tests/support/ears.h"

#include "app/widgets/announcer.h"
#include "app/widgets/heard.h"

#include <QAccessibleInterface>
#include <QApplication>
#include <QStringList>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>
#include <utility>

// As Qt has them, which installs no header of theirs: without a screen nobody else says that somebody
// listens, and until then Qt tells nothing.
class QPlatformAccessibility
{
public:
    void setActive(bool active);
};

class QPlatformIntegration
{
public:
    QPlatformAccessibility* accessibility() const; // the same one for all that do not have their own
};

namespace rig::test {

namespace {

constexpr int kTurnsToTell = 3; // of the event loop, until all that comes of a press has come

bool isGathering()
{
    for (const QWidget* window : QApplication::topLevelWidgets())
        for (const auto* announcer : window->findChildren<const Announcer*>())
            if (announcer->findChild<const QTimer*>()->isActive())
                return true;
    return false;
}

// Qt's handler is a plain function.
QStringList& toldSoFar()
{
    static QStringList told;
    return told;
}

// As a screen reader does: a notification that comes to be shown is read by its name.
void hear(QAccessibleEvent* event)
{
    const QAccessibleInterface* of = event->accessibleInterface();
    if (!of || of->role() != QAccessible::Notification)
        return;
    if (event->type() == QAccessible::ObjectShow) {
        EXPECT_FALSE(of->state().invisible);
        toldSoFar() << of->text(QAccessible::Name);
    } else if (event->type() == QAccessible::Alert) { // for desktops that go by it
        EXPECT_EQ(of->text(QAccessible::Name), toldSoFar().value(toldSoFar().size() - 1));
    }
}

void setListening(bool listening)
{
    const QPlatformIntegration any;
    any.accessibility()->setActive(listening);
}

} // namespace

Ears::Ears()
{
    hearWhatIsPainted();
    setListening(true);
    toldSoFar().clear();
    m_before = QAccessible::installUpdateHandler(hear);
}

Ears::~Ears()
{
    QAccessible::installUpdateHandler(m_before);
    setListening(false);
}

QString Ears::said()
{
    for (int i = 0; i < kTurnsToTell; ++i)
        QApplication::processEvents();
    EXPECT_TRUE(QTest::qWaitFor([] { return !isGathering(); }));
    return std::exchange(toldSoFar(), {}).join(QStringLiteral(" | "));
}

} // namespace rig::test
