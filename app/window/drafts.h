#pragma once

#include <QString>
#include <QStringList>

#include <optional>

class QWidget;

namespace rig {

// What stood typed and not saved in a window when a signal ended the program. It is kept outside the file,
// for this user on this machine, until somebody has read it: nobody has stated it.
struct Drafts
{
    QString when;      // as it is shown
    QStringList lines; // where each stood, and the words
};

// Each field of a page, or of what asks above it, that somebody has typed into: where it is, what it is
// about, its name and the words.
QStringList typedInto(const QWidget& around, const QString& where);

void keepDrafts(const QString& path, const Drafts& drafts); // in the place of those that were kept before
std::optional<Drafts> keptDrafts(const QString& path);
void forgetDrafts(const QString& path);

} // namespace rig
