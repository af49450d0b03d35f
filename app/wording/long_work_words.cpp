#include "app/wording/long_work_words.h"

#include <QLocale>

#include <algorithm>

namespace rig {

QString LongWorkWords::name() { return tr("This takes a while"); }
QString LongWorkWords::reading(const QString& file) { return tr("%1 is being read.").arg(file); }
QString LongWorkWords::comparing(const QString& file)
{
    return tr("%1 is being compared with the file that is open.").arg(file);
}
QString LongWorkWords::takingIn(const QString& file)
{
    return tr("What is new in %1 is being taken in.").arg(file);
}
QString LongWorkWords::salvaging(const QString& file)
{
    return tr("What can be read of %1 is being read.").arg(file);
}
QString LongWorkWords::copying(const QString& file) { return tr("%1 is being copied.").arg(file); }
QString LongWorkWords::writing(const QString& file) { return tr("%1 is being written.").arg(file); }

QString LongWorkWords::soFar(std::size_t done, std::size_t of)
{
    if (of == 0)
        return tr("%1 so far", "a number of rows").arg(QLocale{}.toString(static_cast<qulonglong>(done)));
    return tr("%1 in 100").arg(QLocale{}.toString(static_cast<qulonglong>(std::min(done, of) * 100 / of)));
}

QString LongWorkWords::stop() { return tr("Stop  (Esc)"); }
QString LongWorkWords::leavesNothing() { return tr("If you stop it, everything stays as it is."); }
QString LongWorkWords::stopping() { return tr("It is being stopped."); }
QString LongWorkWords::stopped() { return tr("Stopped. Everything is as it was."); }

} // namespace rig
