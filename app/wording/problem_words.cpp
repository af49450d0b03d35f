#include "app/wording/problem_words.h"

namespace rig {

QString ProblemWords::sentence(const Problem& problem, const QString& givenName)
{
    // A page that saves knows no file name; there is only one file it can mean.
    const QString fileName = givenName.isEmpty() ? tr("this file", "where a file's name stands") : givenName;
    switch (problem.kind) {
    case ProblemKind::NoSuchFile:
        return tr("%1 is not there any more. It may have been moved or renamed, or its drive taken out: "
                  "find it, then open it from its new place.")
            .arg(fileName);
    case ProblemKind::CannotOpen:
        return tr("%1 cannot be opened. Look whether it is a file that you may read, then try again.")
            .arg(fileName);
    case ProblemKind::NotOurFile:
        return tr("%1 is not a Rigband file. Nothing in it was changed; choose a file that ends in "
                  ".rigband.")
            .arg(fileName);
    case ProblemKind::NewerFile:
        return tr("%1 was written by a newer Rigband than this one. Nothing in it was changed; install "
                  "the newer program to open it.")
            .arg(fileName);
    case ProblemKind::ForeignLayout:
        return tr("%1 is not laid out as Rigband lays out its files, so it was left as it is: another "
                  "program "
                  "changed how it is built, first of all at “%2”. Open the latest copy from the folder "
                  "beside "
                  "it, or let Rigband read what can still be read into a new file.")
            .arg(fileName, QString::fromStdString(problem.detail));
    case ProblemKind::WrongVersion:
        return tr("%1 says of itself that it is of another version than it is, so it was left as it is: "
                  "somebody changed its number. Open the latest copy from the folder beside it.")
            .arg(fileName);
    case ProblemKind::DamagedFile:
        return tr("%1 is damaged and was left as it is. Open the latest copy from the folder beside it, "
                  "or let Rigband read what can still be read into a new file.")
            .arg(fileName);
    case ProblemKind::FileReadOnly:
        return tr("%1 may only be read, so nothing was written. Allow writing to it, or copy it to a "
                  "place of your own and open the copy.")
            .arg(fileName);
    case ProblemKind::SaveBrokenOff:
        return tr("A save into %1 was broken off, and what undoes it stands in %1-journal beside it. Open %1 "
                  "with Rigband where it may be written to: it is then as it was before that save. Until "
                  "then "
                  "move or copy neither of the two without the other.")
            .arg(fileName);
    case ProblemKind::FolderReadOnly:
        return tr("The folder of %1 may not be written to, so nothing was written: saving needs room "
                  "there for a second file. Allow writing to the folder, or use a place of your own.")
            .arg(fileName);
    case ProblemKind::DiskFull:
        return tr("The disk with %1 is full, so nothing was written. All that was saved before is kept. "
                  "Free some space elsewhere on the disk, then try again.")
            .arg(fileName);
    case ProblemKind::BusyElsewhere:
        return tr("Another window is writing to %1 just now, so nothing was written here. Wait a moment, "
                  "then try again.")
            .arg(fileName);
    case ProblemKind::StillLookedThrough:
        return tr("%1 is large and is still being looked through for damage, so nothing was written yet. "
                  "Wait a moment, then try again.")
            .arg(fileName);
    case ProblemKind::NoRoomForCopy:
        return tr("No copy of %1 was kept today: the copies beside it would take more than a quarter of the "
                  "free space of the disk. What you enter is saved all the same. Free some space, or copy "
                  "the file to another place yourself.")
            .arg(fileName);
    case ProblemKind::CopyOfLaterDay:
        return tr("Among the copies beside %1 stands “%2”, of a day that is still to come: the clock was "
                  "wrong "
                  "when it was made. It does not count as a copy of a day; look at it, and take it away when "
                  "it "
                  "is not needed.")
            .arg(fileName, QString::fromStdString(problem.detail));
    case ProblemKind::NoGreaterId:
        return tr("Nothing more can be saved in %1: something in it has the last number that there is, which "
                  "another program gave it. Open a copy from before, from the folder beside it.")
            .arg(fileName);
    case ProblemKind::FactRefused:
        return tr("This does not fit with what %1 already holds, so nothing was written. Look over what "
                  "was entered, then try again.")
            .arg(fileName);
    case ProblemKind::NotFound:
        return tr("This is not in %1. Open the page anew to see what the file holds now.").arg(fileName);
    case ProblemKind::FileExists:
        return tr("%1 is there already and was left as it is. Choose another name.").arg(fileName);
    case ProblemKind::Unexpected:
        break;
    }
    return tr("Something unexpected went wrong with %1. It is not certain whether this was saved: close the "
              "file, open it again and look at what it holds before you enter it once more.")
        .arg(fileName);
}

} // namespace rig
