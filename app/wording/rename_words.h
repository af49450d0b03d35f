#pragma once

#include <QCoreApplication>
#include <QString>

#include <cstdint>

namespace rig {

// What rigband-file says when the name of a person is replaced on request.
class RenameWords
{
    Q_DECLARE_TR_FUNCTIONS(RenameWords)

public:
    static QString noSuchPerson(const QString& file, const QString& name);
    static QString several(const QString& file, const QString& name);
    static QString notNeutral(const QString& as);
    static QString taken(const QString& file, const QString& as);
    static QString lookFirst(); // what to do where the file is not as it was saved

    static QString done(const QString& out, const QString& as);
    static QString stillNamed(const QString& kind, std::int64_t facts); // texts of facts, which were left
    static QString whereElse(const QString& file);
};

} // namespace rig
