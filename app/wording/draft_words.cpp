#include "app/wording/draft_words.h"

namespace rig {

QString DraftWords::of(const QString& place, const QString& within)
{
    return tr("%1, %2", "place, and where in it").arg(place, within);
}

QString DraftWords::line(const QString& page, const QString& field, const QString& text)
{
    return tr("%1, %2: “%3”", "page, field: what was typed").arg(page, field, text);
}

QString DraftWords::typedAndNotSaved(const QString& when, const QString& lines)
{
    return tr("Typed and not saved when the program was ended on %1:\n%2", "when; line by line")
        .arg(when, lines);
}

QString DraftWords::copy() { return tr("Copy the words"); }
QString DraftWords::copyHint() { return tr("Copy what was typed, to put it in where it belongs (Ctrl+Y)"); }
QString DraftWords::forget() { return tr("Put away"); }
QString DraftWords::forgetHint() { return tr("What was typed is not kept any longer (Ctrl+D)"); }

} // namespace rig
