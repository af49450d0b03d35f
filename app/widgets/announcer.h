#pragma once

#include <QString>
#include <QWidget>

#include <map>

class QLabel;

namespace rig {

// What a sentence is about. A new one about the same takes the place of the last.
enum class Announced {
    Verdict,
    Movement,
    Kept,
    Refused,
    Stop,
    Notice,
    Question,
    Problem,
    FaultsBar,
    CopyBar,
    QuestionBar,
    ConflictsBar
};

// Says to whoever listens to the screen what whoever looks at it sees change: each sentence once, when it
// comes, in the order in which they are told. Takes no room and no key.
class Announcer : public QWidget
{
    Q_OBJECT

public:
    explicit Announcer(QWidget* parent);

    // The same as the last about it is not said again; empty: nothing stands there any more. While nobody
    // sees where it stands nothing is said.
    void say(Announced about, const QString& sentence);
    // Also where it is the same again.
    void sayAnew(Announced about, const QString& sentence);
    // Somewhere else, or something new: whatever is told from now on is said, also in the same words.
    void beginAnew();

protected:
    void hideEvent(QHideEvent* event) override; // whoever comes back is told anew

private:
    std::map<Announced, QString> m_said;
};

// Shows the sentence and says it, where one is given: that something is kept, or why it is not.
void sayAloud(QLabel* label, const QString& sentence);

} // namespace rig
