#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/store/fact_bytes.h"
#include "core/store/saved_log.h"

#include <QByteArray>

#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace rig {

// Where a chain ends: the hash of a link after which no other comes. Two copies that were written apart and
// then joined have one each, until the next fact is saved.
struct ChainTip
{
    std::int64_t sequence = 0;
    QByteArray hash; // SHA-256 (FIPS 180-4), 32 bytes
};

// The hash at the end of a file whose chain has these tips: of one, its own; of several, what ties them.
QByteArray endHash(std::span<const ChainTip> tips);

// What is hashed for one link, see docs/store.md.
struct LinkContent
{
    QByteArray before;
    QByteArray origin; // canonical bytes
    std::int64_t sequence = 0;
    QByteArray fact; // canonical bytes
};
QByteArray hashOf(const LinkContent& link);

Result<std::vector<ChainTip>> readTips(StoreFile::Connection& connection);

// Links facts to the ones before, as docs/store.md says under “The chain”. One for each connection; what it
// does belongs to the transaction in which it is done.
class Chain
{
public:
    explicit Chain(StoreFile::Connection& connection) : m_connection{connection}, m_bytes{connection} {}

    // Links what was saved in this transaction, in the order of saving. The first time an origin is begun
    // with `newOrigin`.
    Outcome append(std::span<const SavedLog::Saved> facts, Moment now,
                   const std::function<IdBytes()>& newOrigin);
    // At the beginning of a transaction: another connection may have written.
    Outcome catchUp();
    // The transaction was taken back.
    void forget();
    // Links the facts of a file from before it had a chain, in the order of their ids: two copies of a file
    // do it alike.
    Outcome takeOver();

private:
    Outcome beginOrigin(const IdBytes& origin, Moment now, bool takenOver);
    Outcome linkEach(std::span<const SavedLog::Saved> facts);
    Outcome link(std::string_view table, const IdBytes& fact);
    Outcome tie(const QByteArray& before);

    StoreFile::Connection& m_connection;
    FactBytes m_bytes;
    std::optional<IdBytes> m_origin; // of what this connection writes
    QByteArray m_originBytes;
    std::optional<std::vector<ChainTip>> m_tips; // while nobody else wrote
    qlonglong m_dataVersion = -1;
};

} // namespace rig
