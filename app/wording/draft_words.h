#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// On what was typed and not saved when the program was ended.
class DraftWords
{
    Q_DECLARE_TR_FUNCTIONS(DraftWords)

public:
    static QString of(const QString& registration, const QString& page);
    static QString line(const QString& page, const QString& field, const QString& text);
    static QString typedAndNotSaved(const QString& when, const QString& lines);
    static QString copy();
    static QString copyHint();
    static QString forget();
    static QString forgetHint();
};

} // namespace rig
