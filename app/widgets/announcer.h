#pragma once

#include <QPointer>
#include <QString>
#include <QWidget>

#include <vector>

class QLabel;
class QTimer;

namespace rig {

// Tells whoever listens to the screen what whoever looks at it sees change. What comes of one press is
// gathered and told at once, in the order in which it came, when it has been painted: each sentence would cut
// off the one before. Takes no room and no key. One for each window, which owns it.
class Announcer : public QWidget
{
    Q_OBJECT

public:
    explicit Announcer(QWidget* window);

    // Not again where it is the same as the teller's last. Empty: nothing stands there any more. What nobody
    // sees by then is not told.
    void say(QWidget& teller, const QString& sentence);

private:
    struct Told
    {
        QPointer<QWidget> teller;
        QString sentence;
        bool isDue = false;
    };

    Told& lastOf(QWidget& teller);
    void tell();

    std::vector<Told> m_told; // what is due stands in its order
    QTimer* m_gathering = nullptr;
};

// By the announcer of the teller's window; a window without one keeps silent.
void announce(QWidget& teller, const QString& sentence);

// Also where it is the same again: another event, as a second reading that is judged like the first.
void announceAnew(QWidget& teller, const QString& sentence);

// Shows the sentence as sayIn() does, and tells it.
void sayAloud(QLabel* label, const QString& sentence);

} // namespace rig
