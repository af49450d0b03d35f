#include "app/pages/trends/readings_model.h"

#include "app/pictures/marks.h"
#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/trend_words.h"
#include "app/wording/trends_page_words.h"
#include "app/wording/verdict_words.h"
#include "core/rigging/time_known.h"

#include <QDateTime>
#include <QFont>
#include <QPainter>

#include <cmath>
#include <limits>
#include <tuple>

namespace rig {

namespace {

// Graver verdicts are larger; what is not judged comes before all of them.
int gravity(const TrendsReading& one)
{
    if (!one.isJudged())
        return 0;
    switch (one.judgement.verdict) {
    case Verdict::Inside:
        return 1;
    case Verdict::NearEdge:
        return 2;
    case Verdict::NoBandYet:
        return 3;
    case Verdict::CannotTell:
        return 4;
    case Verdict::Outside:
        break;
    }
    return 5;
}

std::int32_t refusesOf(const TrendsReading& one)
{
    return one.reading.interval.refuses ? one.reading.interval.refuses->inMicrometres()
                                        : std::numeric_limits<std::int32_t>::max();
}

bool isNumber(ReadingColumn column)
{
    return column == ReadingColumn::Rigging || column == ReadingColumn::Enters ||
           column == ReadingColumn::Refuses;
}

} // namespace

void ReadingsModel::display(const std::vector<TrendsReading>& readings)
{
    beginResetModel();
    m_readings = readings;
    endResetModel();
}

void ReadingsModel::setLook(const Look& look)
{
    const int side = static_cast<int>(std::lround(14 * look.fonts.scale));
    for (const Verdict verdict :
         {Verdict::NoBandYet, Verdict::Outside, Verdict::CannotTell, Verdict::NearEdge, Verdict::Inside}) {
        QPixmap mark{side, side};
        mark.fill(Qt::transparent);
        QPainter painter{&mark};
        paintMark(painter, shapeOf(verdict), shapeRoleOf(verdict), QRectF{mark.rect()}, look.theme);
        QIcon& icon = m_marks[static_cast<std::size_t>(verdict)];
        icon = QIcon{mark};
        icon.addPixmap(mark, QIcon::Selected); // a chosen row does not change the colour of its mark
    }
    if (!m_readings.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, kReadingColumns - 1), {Qt::DecorationRole});
}

bool ReadingsModel::isLess(ReadingColumn column, int a, int b) const
{
    const TrendsReading& left = m_readings[static_cast<std::size_t>(a)];
    const TrendsReading& right = m_readings[static_cast<std::size_t>(b)];
    const auto byWords = [&] { return text(column, left).localeAwareCompare(text(column, right)) < 0; };
    switch (column) {
    case ReadingColumn::When:
        return left.reading.when < right.reading.when;
    case ReadingColumn::Rigging:
        return left.rigging < right.rigging;
    case ReadingColumn::Enters:
        return left.reading.interval.enters < right.reading.interval.enters;
    case ReadingColumn::Refuses:
        return refusesOf(left) < refusesOf(right);
    case ReadingColumn::Verdict:
        return gravity(left) < gravity(right);
    case ReadingColumn::Kind:
    case ReadingColumn::Person:
    case ReadingColumn::Gauge:
    case ReadingColumn::Note:
    case ReadingColumn::Last_:
        break;
    }
    return byWords();
}

QString ReadingsModel::copyText(ReadingColumn column, int row) const
{
    const TrendsReading& one = m_readings[static_cast<std::size_t>(row)];
    if (column == ReadingColumn::When)
        return QDateTime::fromSecsSinceEpoch(one.reading.when.utcSeconds, Qt::OffsetFromUTC,
                                             one.reading.when.offsetSeconds)
            .toString(isTimeKnown(one.reading) ? QStringLiteral("yyyy-MM-dd HH:mm")
                                               : QStringLiteral("yyyy-MM-dd"));
    return text(column, one).simplified(); // no tab or line break of a note may break the table
}

int ReadingsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_readings.size());
}

int ReadingsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : kReadingColumns;
}

QString ReadingsModel::text(ReadingColumn column, const TrendsReading& one) const
{
    const Formats formats;
    const GapInterval& interval = one.reading.interval;
    switch (column) {
    case ReadingColumn::When:
        return TrendsPageWords::whenRead(one.reading);
    case ReadingColumn::Rigging:
        return one.riggingNumber ? TrendWords::riggingTick(*one.riggingNumber) : TrendsPageWords::noRigging();
    case ReadingColumn::Enters:
        return interval.enters == Gap{} ? TrendsPageWords::nothingEntered() : formats.gap(interval.enters);
    case ReadingColumn::Refuses:
        return interval.refuses ? formats.gap(*interval.refuses) : TrendsPageWords::nothingRefused();
    case ReadingColumn::Verdict:
        return one.isJudged() ? VerdictWords::shortWord(one.judgement.verdict) : TrendsPageWords::notJudged();
    case ReadingColumn::Kind:
        return TrendsPageWords::kindOf(one.reading.state, one.reading.purpose, one.reading.turn);
    case ReadingColumn::Person:
        return QString::fromStdString(one.person);
    case ReadingColumn::Gauge:
        return QString::fromStdString(one.gauge);
    case ReadingColumn::Note:
    case ReadingColumn::Last_:
        break;
    }
    return QString::fromStdString(one.note);
}

QString ReadingsModel::toolTip(ReadingColumn column, const TrendsReading& one) const
{
    if (column == ReadingColumn::Verdict && one.isJudged())
        return VerdictWords::explanation(one.judgement, one.reading.interval);
    return text(column, one);
}

QVariant ReadingsModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const TrendsReading& one = m_readings[static_cast<std::size_t>(index.row())];
    const auto column = static_cast<ReadingColumn>(index.column());
    switch (role) {
    case Qt::DisplayRole:
        return text(column, one);
    case Qt::AccessibleTextRole:
        return SentenceParts::cell(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                                   text(column, one), one.isStruckThrough() && column != ReadingColumn::Note);
    case Qt::ToolTipRole:
        return toolTip(column, one);
    case Qt::TextAlignmentRole:
        return QVariant{(isNumber(column) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    case Qt::DecorationRole:
        if (column == ReadingColumn::Verdict && one.isJudged())
            return m_marks[static_cast<std::size_t>(one.judgement.verdict)];
        return {};
    case Qt::FontRole:
        if (one.isStruckThrough() && column != ReadingColumn::Note) {
            QFont struck;
            struck.setStrikeOut(true);
            return struck;
        }
        return {};
    default:
        return {};
    }
}

QVariant ReadingsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    const auto column = static_cast<ReadingColumn>(section);
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant{(isNumber(column) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    if (role != Qt::DisplayRole)
        return {};
    switch (column) {
    case ReadingColumn::When:
        return TrendsPageWords::when();
    case ReadingColumn::Rigging:
        return TrendsPageWords::riggingNumber();
    case ReadingColumn::Enters:
        return TrendsPageWords::enters();
    case ReadingColumn::Refuses:
        return TrendsPageWords::refuses();
    case ReadingColumn::Verdict:
        return TrendsPageWords::verdict();
    case ReadingColumn::Kind:
        return TrendsPageWords::kind();
    case ReadingColumn::Person:
        return TrendsPageWords::person();
    case ReadingColumn::Gauge:
        return TrendsPageWords::gauge();
    case ReadingColumn::Note:
    case ReadingColumn::Last_:
        break;
    }
    return TrendsPageWords::note();
}

bool ReadingsOrder::lessThan(const QModelIndex& left, const QModelIndex& right) const
{
    const auto* model = static_cast<const ReadingsModel*>(sourceModel());
    return model->isLess(static_cast<ReadingColumn>(left.column()), left.row(), right.row());
}

} // namespace rig
