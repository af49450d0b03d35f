#include "app/wording/prompt_words.h"

namespace rig {

QString PromptWords::noticeTitle() { return tr("Rigband"); }
QString PromptWords::understood() { return tr("Close"); }
QString PromptWords::leaveAsItIs() { return tr("Leave as it is"); }
QString PromptWords::takeText() { return tr("Enter this"); }
QString PromptWords::sayItInWords()
{
    return tr("That is no reason. Say in words why; a figure is typed afterwards.");
}

QString PromptWords::reasonIsNotEntered()
{
    return tr("A reason is typed and not entered. It is lost when Rigband is closed now.");
}

QString PromptWords::newFileTitle() { return tr("Choose a name for the file"); }
QString PromptWords::saveFileTitle() { return tr("Where to write it"); }
QString PromptWords::openFileTitle() { return tr("Choose a file"); }

QString PromptWords::offered(const QString& answer, int number)
{
    return tr("%1  (Alt+%2)", "answer, its key").arg(answer).arg(number);
}

QString PromptWords::offeredAnd(const QString& answer, const QString& typed)
{
    return tr("%1; %2", "offered answer, what was typed besides").arg(answer, typed);
}

QStringList PromptWords::spoiledBy()
{
    // Dirt in the joint or a sleeve that was moved is a finding: such a reading stands.
    return {tr("Wrong leaf"), tr("Misread"), tr("Leaf bent or tilted"), tr("Dirt on the leaf")};
}

// With the keys of the others as they are there.
QStringList PromptWords::noReadingHere()
{
    return spoiledBy() + QStringList{tr("Wrong coupling"), tr("Wrong person")};
}

} // namespace rig
