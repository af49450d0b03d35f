#include "core/store/layout.h"

#include "core/store/connection.h"
#include "core/store/file_header.h"
#include "core/store/migrations.h"

#include <QCryptographicHash>

#include <algorithm>
#include <array>
#include <cctype>

namespace rig {

namespace {

using Part = std::array<std::string, 4>; // type, name, the table's name, SQL
using Parts = std::vector<Part>;         // sorted

// SHA-256 of what each version is laid out as, so that nobody waits at each opening for the migrations to be
// run once more. A test holds them against the migrations; a version without one here is made and compared.
constexpr std::array kKnown{
    "f96091b9942fc443118d3a20d8352f232af1c0eff930b621bb65d376e642103f",
    "4993af33cc18056447f39c7d254a1ac9fc391c48530cf411038ed84540ef7642",
    "77acf1158153903a57cacb000a3a8d3a77d78233d4110d1d122d864e8bf90923",
    "3e7abf6627bcfe8a3b80d7eb7842a4dde5c35c858befb430a56c21fe1e84b73c",
    "d319ba3748dabbffaf5133b5923d6e0631bbfba475f1353c035c8a4ec955f428",
    "4fd7410f506c6cf8dda0f010a4f41689525d3b15ac387337e8ef726a242c5cc3",
    "91d294fe82fda5aa6df16740bc94aa1fe13655008d883b82207f969cd483f294",
    "8f0bb476489c2e2a31acee8eb9dfd002b3d73b1fa9a5dfcc8a91ddb2ea65d1e1",
    "3c392771a7729d6b0cfcfad8b4f938ca2a4d2b7da12020a3b3425a2038efbd94",
    "6fa3fbdb1648e1c4769ee2f66c7facb2a4eb4ae7ae4c58727d21d60d85b5c475",
    "b68934aa220614758279a2a7c0bee7f7abe2bfa44d11ff4cc417e80905f7592a",
    "4dbc394e198a3d78db5bf2b5ca9d7c6bc93e3b1a1ee3620ec402c54b39ed38ef",
    "9429dd08094ed1987354decbc30298320087c5d2532e9e1e0427435b50a2c490",
    "e7b28f89f848b11bfaa0f7f438f92e0fee300dba9203f96d16be3725237fac87",
};

bool isOfAWord(char c)
{
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

// The word in double quotes that begins here, which SQLite may have quoted by itself; empty for anything
// else.
std::string_view quotedWord(std::string_view sql)
{
    const auto end = std::find_if_not(sql.begin() + 1, sql.end(), isOfAWord);
    const bool isWord = end != sql.end() && *end == '"' && end != sql.begin() + 1;
    return isWord ? std::string_view{sql.begin() + 1, end} : std::string_view{};
}

// Without what says nothing: how it is parted into lines, and quotes around plain words.
std::string normalised(std::string_view sql)
{
    std::string text;
    bool inLiteral = false;
    for (std::size_t at = 0; at < sql.size(); ++at) {
        const char c = sql[at];
        inLiteral = inLiteral != (c == '\'');
        if (inLiteral)
            text += c;
        else if (std::isspace(static_cast<unsigned char>(c)) != 0)
            text += text.empty() || text.back() == ' ' ? "" : " ";
        else if (const auto word = c == '"' ? quotedWord(sql.substr(at)) : ""; !word.empty()) {
            text += word;
            at += word.size() + 1;
        } else
            text += c;
    }
    return text;
}

bool isStatistics(const Part& part)
{
    return part[0] == "table" && (part[1] == "sqlite_stat1" || part[1] == "sqlite_stat4");
}

Result<Parts> partsOf(StoreFile::Connection& file)
{
    Parts parts;
    const Outcome read = file.each(QStringLiteral("SELECT type, name, tbl_name, sql FROM sqlite_schema"), {},
                                   [&parts](Row& row) {
                                       Part part{row.text(), row.text(), row.text(), normalised(row.text())};
                                       if (!isStatistics(part))
                                           parts.push_back(std::move(part));
                                   });
    if (!read)
        return read.problem();
    std::ranges::sort(parts);
    return parts;
}

std::string hashOf(const Parts& parts)
{
    QCryptographicHash hash{QCryptographicHash::Sha256};
    for (const Part& part : parts)
        for (const std::string& text : part) // each with its end, so that none runs into the next
            hash.addData(QByteArrayView{text.c_str(), static_cast<qsizetype>(text.size() + 1)});
    return hash.result().toHex().toStdString();
}

Result<std::unique_ptr<StoreFile::Connection>> madeInMemory(int version)
{
    auto made = StoreFile::Connection::open({}, StoreFile::Connection::Access::InMemory);
    if (!made)
        return made;
    if (const Outcome done = migrate(*made.value(), version); !done)
        return done.problem();
    return made;
}

Result<Parts> partsOfVersion(int version)
{
    const auto made = madeInMemory(version);
    return made ? partsOf(*made.value()) : Result<Parts>{made.problem()};
}

// As it may be shown: a file's maker chose it.
std::string showable(std::string name)
{
    constexpr std::size_t kMostShown = 40;
    std::ranges::replace_if(
        name, [](char c) { return !isOfAWord(c) && c != ' ' && c != '-'; }, '?');
    return name.substr(0, kMostShown);
}

Problem firstDifference(const Parts& found, const Parts& wanted)
{
    Parts differing;
    std::ranges::set_symmetric_difference(found, wanted, std::back_inserter(differing));
    const auto named = std::ranges::find_if( // an index that SQLite made by itself says less
        differing, [](const Part& part) { return !part[1].starts_with("sqlite_"); });
    const Part& first = named == differing.end() ? differing.front() : *named;
    return Problem{ProblemKind::ForeignLayout, showable(first[1])};
}

std::optional<int> versionWith(const std::string& hash)
{
    for (int version = newestSchemaVersion(); version >= 1; --version)
        if (isLayoutKnown(version, hash))
            return version;
    return std::nullopt;
}

Outcome compared(const Parts& found, int version)
{
    const Result<Parts> wanted = partsOfVersion(version);
    if (!wanted)
        return wanted.problem();
    if (found == wanted.value())
        return Done{};
    if (const auto other = versionWith(hashOf(found)))
        return Problem{ProblemKind::WrongVersion, "is laid out as version " + std::to_string(*other)};
    return firstDifference(found, wanted.value());
}

} // namespace

Result<std::string> layoutHash(int version)
{
    const Result<Parts> parts = partsOfVersion(version);
    if (!parts)
        return parts.problem();
    return hashOf(parts.value());
}

Result<LayoutColumns> columnsOfLayout(int version)
{
    const auto made = madeInMemory(version);
    if (!made)
        return made.problem();
    LayoutColumns columns;
    const Outcome read = made.value()->each(
        QStringLiteral("SELECT t.name, c.name FROM sqlite_schema t, pragma_table_info(t.name) c WHERE t.type "
                       "= 'table'"),
        {}, [&columns](Row& row) {
            const std::string table = row.text();
            columns.emplace(table, row.text());
        });
    if (!read)
        return read.problem();
    return columns;
}

bool isLayoutKnown(int version, const std::string& hash)
{
    const auto at = static_cast<std::size_t>(version - 1);
    return at < kKnown.size() && kKnown[at] == hash;
}

std::optional<int> versionLaidOutAs(StoreFile::Connection& file)
{
    const Result<Parts> found = partsOf(file);
    return found ? versionWith(hashOf(found.value())) : std::nullopt;
}

Outcome checkLayout(StoreFile::Connection& file)
{
    const auto cookie = file.integer(QStringLiteral("PRAGMA schema_version"));
    if (!cookie)
        return cookie.problem();
    const Result<Parts> found = partsOf(file);
    if (!found)
        return found.problem();
    file.schemaCookie = cookie.value();
    if (isLayoutKnown(file.schemaVersion, hashOf(found.value())))
        return Done{};
    const Outcome same = compared(found.value(), file.schemaVersion);
    if (!same)
        file.schemaCookie.reset();
    return same;
}

Outcome readVersion(StoreFile::Connection& file)
{
    const auto id = file.integer(QStringLiteral("PRAGMA application_id"));
    if (!id)
        return id.problem();
    const auto version = file.integer(QStringLiteral("PRAGMA user_version"));
    if (!version)
        return version.problem();
    file.schemaVersion = static_cast<int>(version.value().value_or(0));
    const Outcome known =
        checkHeader(FileHeader{static_cast<std::uint32_t>(id.value().value_or(0)),
                               static_cast<std::uint32_t>(version.value().value_or(0)), false});
    return known ? checkLayout(file) : known;
}

Outcome checkLayoutAgain(StoreFile::Connection& file)
{
    if (!file.schemaCookie) // just being made or brought up to date
        return Done{};
    const auto cookie = file.integer(QStringLiteral("PRAGMA schema_version"));
    if (!cookie)
        return cookie.problem();
    if (cookie.value() == *file.schemaCookie)
        return Done{};
    const auto version = file.integer(QStringLiteral("PRAGMA user_version"));
    if (!version)
        return version.problem();
    if (version.value() > file.schemaVersion)
        return Problem{ProblemKind::NewerFile, "brought up to date by another program meanwhile"};
    const std::optional<qlonglong> before = file.schemaCookie;
    const Outcome same = checkLayout(file);
    if (!same)
        file.schemaCookie = before; // so that the next write is refused as well
    return same;
}

} // namespace rig
