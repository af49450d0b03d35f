#pragma once

#include "core/store/fact_shape.h"

#include <random>
#include <string>

namespace rig::test {

// A source for hear(): whatever may stand in each column, drawn with a seed.
class DrawnCells final : public CellSource
{
public:
    explicit DrawnCells(unsigned seed) : m_random{seed} {}

    std::optional<IdBytes> takeId(const ColumnInfo& column) override;
    std::optional<std::int64_t> takeInteger(const ColumnInfo& column) override;
    std::optional<double> takeReal(const ColumnInfo& column) override;
    std::optional<std::string_view> takeText(const ColumnInfo& column) override;
    std::optional<BytesView> takeBytes(const ColumnInfo& column) override;
    bool skipEmpty(int cells) override;
    void refuse(const ColumnInfo& column, const char* why) override;

    std::int64_t drawn(std::int64_t least, std::int64_t most);
    int refusals() const { return m_refusals; }

private:
    bool staysEmpty(const ColumnInfo& column) { return column.mayBeEmpty && drawn(0, 2) == 0; }
    std::string text(const ColumnInfo& column);

    std::mt19937_64 m_random;
    std::string m_text; // taken last
    int m_refusals = 0;
};

// "column=value" in each line. Two facts are the same when these are.
std::string written(const AnyFact& fact);

} // namespace rig::test
