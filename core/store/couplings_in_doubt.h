#pragma once

#include "core/review/facts_in_doubt.h"
#include "core/store/connection.h"

#include <set>
#include <string>
#include <utility>

namespace rig {

// What of the couplings no more stands on facts as they were saved, fact by fact as something is found wrong
// with each. Only what a band, a verdict or a question is made of counts. Reads what stands there now: a fact
// that was moved from one coupling to another counts for the ones that it names.
class CouplingsInDoubt
{
public:
    explicit CouplingsInDoubt(StoreFile::Connection& connection) : m_connection{connection} {}

    // Of a table of core/store/tables.h: a fact that stands there otherwise than it was saved, or that
    // nobody saved.
    Outcome take(const std::string& table, const IdBytes& fact);
    // One that is gone: it does not say any more what it was about.
    void takeGone(const std::string& table);
    // Facts are gone with what linked them: nobody can tell which.
    void takeAll() { m_found.all = true; }

    const FactsInDoubt& found() const { return m_found; }

private:
    StoreFile::Connection& m_connection;
    FactsInDoubt m_found;
    std::set<std::pair<const char*, IdBytes>> m_asked; // so far: many facts are of one gauge or airframe
};

} // namespace rig
