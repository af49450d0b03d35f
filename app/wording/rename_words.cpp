#include "app/wording/rename_words.h"

#include "app/wording/formats.h"

namespace rig {

QString RenameWords::noSuchPerson(const QString& file, const QString& name)
{
    return tr("%1 has no person named “%2”. Look in “Set up” how the name is written there.").arg(file, name);
}

QString RenameWords::several(const QString& file, const QString& name)
{
    return tr("%1 has several persons named “%2”. Open it and say first whether they are one and the "
              "same, or give one of them another name.")
        .arg(file, name);
}

QString RenameWords::notNeutral(const QString& as)
{
    return tr("“%1” cannot stand for a name: write one or two capital letters, with a number behind them if "
              "you like, such as P 1.")
        .arg(as);
}

QString RenameWords::taken(const QString& file, const QString& as)
{
    return tr("Somebody else in %1 is named “%2”. Choose other letters.").arg(file, as);
}

QString RenameWords::lookFirst()
{
    return tr("Nothing was written: in the new file nobody could tell any more what was replaced on "
              "request and what was changed. Look at these facts first.");
}

QString RenameWords::done(const QString& out, const QString& as)
{
    return tr("Made: %1. “%2” stands there for the name, and the person’s telephone number is gone. "
              "That the name was replaced, when and by whom, is told there from now on; every other "
              "fact is held against the chain as before.")
        .arg(out, as);
}

QString RenameWords::stillNamed(const QString& kind, std::int64_t facts)
{
    return tr("%1 whose words still hold the name or the telephone number, as they were typed: %2. "
              "Read them; nothing in them was changed.")
        .arg(kind, Formats{}.count(static_cast<int>(facts)));
}

QString RenameWords::whereElse(const QString& file)
{
    return tr("The name still stands in %1 itself, in its dated copies, in the files of other laptops, "
              "in tables and on prints. A part of the name, or a nickname, was not looked for. Delete "
              "what is no longer needed.")
        .arg(file);
}

} // namespace rig
