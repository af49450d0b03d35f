#pragma once

#include "core/store/connection.h"

#include <QStringList>

namespace rig {

// Another file as `theirs` in the statements of this connection, and no check of references: a salvaged file
// has facts that name lost ones, and they are kept too. Begun and ended outside of transactions.
class Attached
{
public:
    Attached(StoreFile::Connection& connection, const std::string& theirs);
    ~Attached();
    Attached(const Attached&) = delete;
    Attached& operator=(const Attached&) = delete;

    const Outcome& outcome() const { return m_outcome; }

private:
    StoreFile::Connection& m_connection;
    Outcome m_outcome;
};

Result<QStringList> columnsIn(StoreFile::Connection& connection, std::string_view table);

// Those rows `t` of a table of theirs for which `which` holds come into ours.
Outcome takeRows(StoreFile::Connection& connection, std::string_view table, const QString& which);

} // namespace rig
