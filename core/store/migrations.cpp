#include "core/store/migrations.h"

#include "core/store/chain.h"
#include "core/store/connection.h"
#include "core/store/layout.h"

#include <QFile>

#include <algorithm>
#include <array>
#include <cassert>
#include <string_view>

namespace rig {

namespace {

// In order; the first makes version 1. Released ones never change (tests/store holds their checksums).
constexpr std::string_view kChainMigration = "0012_chain.sql";
constexpr std::array<std::string_view, 14> kMigrations{
    "0001_first.sql",      "0002_record.sql", "0003_kinds.sql",  "0004_answers.sql", "0005_kinds.sql",
    "0006_record.sql",     "0007_hands.sql",  "0008_paper.sql",  "0009_said.sql",    "0010_learning.sql",
    "0011_taken_back.sql", kChainMigration,   "0013_joined.sql", "0014_names.sql"};

// The first layout with a chain.
int chainVersion()
{
    return static_cast<int>(std::ranges::find(kMigrations, kChainMigration) - kMigrations.begin()) + 1;
}

Outcome apply(StoreFile::Connection& connection, int version)
{
    for (const QString& statement : migrationStatements(version))
        if (const Outcome run = connection.run(statement); !run)
            return run;
    if (version == chainVersion())
        if (const Outcome taken = Chain{connection}.takeOver(); !taken)
            return taken;
    if (const Outcome set = connection.run(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId));
        !set)
        return set;
    return connection.run(QStringLiteral("PRAGMA user_version = %1").arg(version));
}

Outcome step(StoreFile::Connection& connection, int version)
{
    Transaction transaction{connection};
    if (!transaction.begun())
        return transaction.begun();
    const auto current = connection.integer(QStringLiteral("PRAGMA user_version"));
    if (!current)
        return current.problem();
    if (current.value() < version)
        if (const Outcome applied = apply(connection, version); !applied)
            return applied;
    return transaction.commit();
}

} // namespace

int newestSchemaVersion()
{
    return static_cast<int>(kMigrations.size());
}

QStringList migrationStatements(int version)
{
    assert(version >= 1 && version <= newestSchemaVersion());
    const std::string_view name = kMigrations[static_cast<std::size_t>(version - 1)];
    QFile file{QStringLiteral(":/store/migrations/") +
               QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()))};
    const bool opened = file.open(QIODevice::ReadOnly);
    assert(opened);
    static_cast<void>(opened);
    return QString::fromUtf8(file.readAll()).split(QStringLiteral("\n-- next\n"));
}

namespace {

Outcome stepwiseTo(StoreFile::Connection& connection, int version)
{
    for (int next = connection.schemaVersion + 1; next <= version; ++next) {
        if (const Outcome done = step(connection, next); !done)
            return done;
        connection.schemaVersion = next;
    }
    return Done{};
}

// Nobody else has a file that is just being made: the disk is waited for once.
Outcome atOnceTo(StoreFile::Connection& connection, int version)
{
    Transaction transaction{connection};
    if (!transaction.begun())
        return transaction.begun();
    if (const Outcome done = stepwiseTo(connection, version); !done)
        return done;
    return transaction.commit();
}

} // namespace

Outcome migrate(StoreFile::Connection& connection, int version)
{
    // A table that is made anew also takes in what refers to something lost, as a salvaged file holds it.
    if (const Outcome off = connection.run(QStringLiteral("PRAGMA foreign_keys = OFF")); !off)
        return off;
    connection.schemaCookie.reset();
    const bool isNew = connection.schemaVersion == 0;
    const Outcome done = isNew ? atOnceTo(connection, version) : stepwiseTo(connection, version);
    if (const Outcome on = connection.run(QStringLiteral("PRAGMA foreign_keys = ON")); !on)
        return on;
    return done;
}

} // namespace rig
