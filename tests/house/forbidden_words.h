#pragma once

#include <QStringList>

// The words that the program never says, since they would sound as if it decided. They stand in
// forbidden_words.txt beside this, one a line, where rules.sh reads them too.
namespace rig::test {

QStringList forbiddenWords();

// Those of them that the text says: whole words, any case, across blanks and ends of lines. “Airworthiness”
// may stand in the footer of printed pages only, which says what they are not.
QStringList forbiddenIn(const QString& text);

} // namespace rig::test
