#pragma once

#include <QCoreApplication>
#include <QString>

#include <string_view>

namespace rig {

// How that is read which a file holds as a word of its own: part-changed, enters_um. Each is empty where
// nobody knows it.
class StoredWords
{
    Q_DECLARE_TR_FUNCTIONS(StoredWords)

public:
    static QString column(std::string_view column);
    // Whether this column holds words, and nothing that somebody typed.
    static bool areWords(std::string_view table, std::string_view column);
    static QString word(std::string_view table, std::string_view column, std::string_view stored);
    static QString yesOrNo(std::string_view column, std::string_view stored);
};

} // namespace rig
