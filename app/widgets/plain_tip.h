#pragma once

#include <QString>
#include <QTextDocument>

namespace rig {

// A tip is read as HTML where it looks like it, and names in it come from the user.
inline QString plainTip(const QString& text)
{
    return Qt::mightBeRichText(text) ? Qt::convertFromPlainText(text) : text;
}

} // namespace rig
