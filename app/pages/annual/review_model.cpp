#include "app/pages/annual/review_model.h"

#include "app/wording/picture_words.h"

#include <algorithm>
#include <numeric>

namespace rig {

namespace {

// Where the latest reading lies in its band: 0 at the lower inner edge, 1 at the upper one.
std::optional<double> placeInBand(const BandBarView& bar)
{
    if (!bar.band || !bar.reading || !bar.reading->refuses)
        return std::nullopt;
    const double middle = (bar.reading->enters.inMillimetres() + bar.reading->refuses->inMillimetres()) / 2;
    const BandEdges& inner = bar.band->inner;
    return (middle - inner.lower) / (inner.upper - inner.lower);
}

const AnnualFigure* figureOf(AnnualColumn column, const AnnualRow& row)
{
    switch (column) {
    case AnnualColumn::Moved:
        return &row.moved;
    case AnnualColumn::Excursion:
        return &row.excursion;
    case AnnualColumn::Scatter:
        return &row.scatter;
    case AnnualColumn::Chance:
        return &row.chance;
    case AnnualColumn::Coupling:
    case AnnualColumn::Band:
    case AnnualColumn::Questions:
    case AnnualColumn::StandsOut:
    case AnnualColumn::Last_:
        break;
    }
    return nullptr;
}

std::optional<double> sortedBy(AnnualColumn column, const AnnualRow& row)
{
    if (const AnnualFigure* figure = figureOf(column, row))
        return figure->sortedBy;
    if (column == AnnualColumn::Band)
        return placeInBand(row.bar);
    return row.openQuestions;
}

QString cellText(AnnualColumn column, const AnnualRow& row)
{
    if (const AnnualFigure* figure = figureOf(column, row))
        return figure->figure.isEmpty() ? AnnualWords::spoken(column, figure->instead, {})
                                        : AnnualWords::spoken(column, figure->figure, figure->beside);
    switch (column) {
    case AnnualColumn::Coupling:
        return AnnualWords::spoken(column, row.name, row.saysInWords);
    case AnnualColumn::Band:
        return AnnualWords::spoken(column, PictureWords::bandBar(row.bar), row.noBand);
    case AnnualColumn::Questions:
        return AnnualWords::spoken(column, AnnualWords::questionsOpen(row.openQuestions), {});
    case AnnualColumn::Moved:
    case AnnualColumn::Excursion:
    case AnnualColumn::Scatter:
    case AnnualColumn::Chance:
    case AnnualColumn::StandsOut:
    case AnnualColumn::Last_:
        break;
    }
    return AnnualWords::spoken(column, AnnualWords::signs(row.signs), {});
}

} // namespace

void ReviewModel::display(const std::vector<AnnualRow>& rows)
{
    beginResetModel();
    m_rows = rows;
    arrange();
    endResetModel();
}

int ReviewModel::find(CouplingId coupling) const
{
    const auto found =
        std::ranges::find(m_order, coupling, [this](std::size_t i) { return m_rows[i].coupling; });
    return found == m_order.end() ? -1 : static_cast<int>(found - m_order.begin());
}

int ReviewModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int ReviewModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : kAnnualColumns;
}

QVariant ReviewModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const AnnualRow& row = rowAt(index.row());
    const auto column = static_cast<AnnualColumn>(index.column());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return cellText(column, row);
    case Qt::ToolTipRole:
        return column == AnnualColumn::Band ? PictureWords::bandBar(row.bar) : AnnualWords::meaningOf(column);
    default:
        return {};
    }
}

QVariant ReviewModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    const auto column = static_cast<AnnualColumn>(section);
    switch (role) {
    case Qt::DisplayRole:
        return AnnualWords::heading(column);
    case Qt::ToolTipRole:
        return AnnualWords::meaningOf(column);
    case Qt::TextAlignmentRole:
        return QVariant{Qt::AlignLeft | Qt::AlignVCenter};
    default:
        return {};
    }
}

void ReviewModel::sort(int column, Qt::SortOrder order)
{
    emit layoutAboutToBeChanged();
    const std::vector<std::size_t> before = m_order;
    m_column = column;
    m_direction = order;
    arrange();
    const QModelIndexList held = persistentIndexList();
    for (const QModelIndex& one : held) {
        const auto now = std::ranges::find(m_order, before[static_cast<std::size_t>(one.row())]);
        changePersistentIndex(one, index(static_cast<int>(now - m_order.begin()), one.column()));
    }
    emit layoutChanged();
}

void ReviewModel::arrange()
{
    m_order.resize(m_rows.size());
    std::iota(m_order.begin(), m_order.end(), std::size_t{0});
    const auto column = static_cast<AnnualColumn>(m_column);
    if (m_column < 0 || column == AnnualColumn::StandsOut) {
        if (m_column >= 0 && m_direction == Qt::DescendingOrder)
            std::ranges::reverse(m_order);
        return;
    }
    const bool falling = m_direction == Qt::DescendingOrder;
    if (column == AnnualColumn::Coupling) {
        std::ranges::stable_sort(m_order, [&](std::size_t a, std::size_t b) {
            const int order = m_rows[a].name.localeAwareCompare(m_rows[b].name);
            return falling ? order > 0 : order < 0;
        });
        return;
    }
    std::ranges::stable_sort(m_order, [&](std::size_t a, std::size_t b) {
        const std::optional<double> one = sortedBy(column, m_rows[a]);
        const std::optional<double> other = sortedBy(column, m_rows[b]);
        if (!one || !other)
            return one.has_value() && !other.has_value();
        return falling ? *one > *other : *one < *other;
    });
}

} // namespace rig
