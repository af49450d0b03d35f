#include "app/wording/copy_words.h"

#include "app/wording/chain_words.h"
#include "app/wording/formats.h"

namespace rig {

QString CopyWords::salvage() { return tr("Read what can be read into a new file…"); }

QString CopyWords::salvageHint()
{
    return tr("Ctrl+R. The file that cannot be opened is only read and stays as it is.");
}

QString CopyWords::salvageNothingLeftOut()
{
    return tr("Nothing was found that had to be left out. What was never readable cannot be counted.");
}

QString CopyWords::menu() { return tr("Copies of this file…"); }

QString CopyWords::openOneFirst() { return tr("Open a file first: its copies lie in a folder beside it."); }

QString CopyWords::heading() { return tr("Copies of this file"); }

QString CopyWords::count(int copies)
{
    if (copies == 0)
        return tr("There is no copy yet. One is kept when a file is opened for the first time on a day.");
    return tr("Copies in the folder beside it: %1").arg(Formats{}.count(copies));
}

QString CopyWords::listKeys() { return tr("Up and Down: another copy. Enter: look at it. Esc: back."); }

QString CopyWords::copyOf(Day day, std::uintmax_t bytes)
{
    const QString size =
        QLocale{}.formattedDataSize(static_cast<qint64>(bytes), 1, QLocale::DataSizeSIFormat);
    return tr("%1, %2", "day and size of a copy").arg(Formats{}.day(day), size);
}

QString CopyWords::holds(const FileEnd& end) { return tr("The copy: %1.").arg(ChainWords::end(end)); }

QString CopyWords::inList(const QString& file, const FileEnd& end)
{
    return tr("%1: %2", "file name of a copy, what it holds").arg(file, ChainWords::end(end));
}

QString CopyWords::whatEndIs()
{
    return tr("The end is a short sign for all that was saved, in its order. It stands at the foot of every "
              "print.");
}

QString CopyWords::place(const FileEnd& end, const std::optional<PrintPlace>& place, bool isFileChanged)
{
    if (end.facts == 0)
        return tr("Nothing had been saved in it yet.");
    if (!place)
        return tr(
            "The file that is open never ended so: it and the copy went their own ways, or facts that the "
            "copy holds were changed or taken out of the file since.");
    if (isFileChanged)
        return tr("The file that is open ended so after fact %1. But facts in it have been changed by "
                  "another "
                  "program since: the copy may hold what was saved.")
            .arg(QLocale{}.toString(static_cast<qlonglong>(place->sequence)));
    return tr("The file that is open ended so after fact %1: all that stood in the copy is still in the "
              "file.")
        .arg(QLocale{}.toString(static_cast<qlonglong>(place->sequence)));
}

QString CopyWords::look() { return tr("Look at it"); }

QString CopyWords::lookHint()
{
    return tr("Enter. The copy is shown in place of the file and only read; nothing can be saved in it.");
}

QString CopyWords::bringBack() { return tr("Bring back as a new file…"); }

QString CopyWords::bringBackHint()
{
    return tr(
        "Ctrl+B. What the copy holds is written under a new name and opened. The file and the copy stay "
        "as they are.");
}

QString CopyWords::broughtBack(const QString& file)
{
    return tr("%1 now holds what the copy held, and is opened. The file that the copy was made of stays as "
              "it is: "
              "what was saved in it since then is only there.")
        .arg(file);
}

QString CopyWords::onlyLookedAt(const QString& file, Day day)
{
    return tr("This is a copy of %1, of %2. It is only looked at: nothing can be saved in it.")
        .arg(file, Formats{}.day(day));
}

QString CopyWords::backToFile() { return tr("Back to the file"); }

QString CopyWords::backToFileHint() { return tr("Ctrl+W. The copy stays as it is."); }

} // namespace rig
