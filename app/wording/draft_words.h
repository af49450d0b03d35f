#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// On what was typed and not saved when the program was ended.
class DraftWords
{
    Q_DECLARE_TR_FUNCTIONS(DraftWords)

public:
    // Of the wider place the narrower one: a page of an airframe, a joint on a page.
    static QString of(const QString& place, const QString& within);
    static QString line(const QString& page, const QString& field, const QString& text);
    static QString typedAndNotSaved(const QString& when, const QString& lines);
    static QString copy();
    static QString copyHint();
    static QString forget();
    static QString forgetHint();
};

} // namespace rig
