#pragma once

#include <QCoreApplication>
#include <QString>

#include <cstddef>

namespace rig {

// What is said while something takes long.
class LongWorkWords
{
    Q_DECLARE_TR_FUNCTIONS(LongWorkWords)

public:
    static QString name(); // of what stands over the window
    static QString reading(const QString& file);
    static QString comparing(const QString& file);
    static QString takingIn(const QString& file);
    static QString salvaging(const QString& file);
    static QString copying(const QString& file);
    static QString writing(const QString& file);

    // `of` is 0 where it is not known how much there is.
    static QString soFar(std::size_t done, std::size_t of);
    static QString stop();
    static QString leavesNothing();
    static QString stopping();
    static QString stopped();
};

} // namespace rig
