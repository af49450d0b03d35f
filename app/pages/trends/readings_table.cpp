#include "app/pages/trends/readings_table.h"

#include "app/pages/trends/readings_model.h"
#include "app/wording/trends_page_words.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr int kWhen = static_cast<int>(ReadingColumn::When);
constexpr int kNote = static_cast<int>(ReadingColumn::Note);

} // namespace

ReadingsTable::ReadingsTable(QWidget* parent)
    : QTableView{parent}, m_model{new ReadingsModel{this}}, m_order{new ReadingsOrder{this}}
{
    m_order->setSourceModel(m_model);
    setModel(m_order);
    setObjectName("readingsTable");
    setToolTip(TrendsPageWords::tableHint());
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(kNote, QHeaderView::Stretch);
    horizontalHeader()->setResizeContentsPrecision(60); // a long history is not measured row by row
    setSortingEnabled(true);
    sortByColumn(kWhen, Qt::DescendingOrder);
    connect(horizontalHeader(), &QHeaderView::sortIndicatorChanged, this, &ReadingsTable::fitColumns);
}

void ReadingsTable::setLook(const Look& look)
{
    m_look = look;
    m_model->setLook(look);
    const int side = static_cast<int>(std::lround(14 * look.fonts.scale));
    setIconSize({side, side});
    horizontalHeader()->setMinimumSectionSize(static_cast<int>(60 * look.fonts.scale));
    verticalHeader()->setMinimumSectionSize(8);
    verticalHeader()->setDefaultSectionSize(static_cast<int>(std::lround(26 * look.fonts.scale)));
    setMinimumHeight(static_cast<int>(std::lround(130 * look.fonts.scale)));
    fitColumns();
}

void ReadingsTable::display(const CouplingTrend& trend)
{
    m_quiet = true;
    m_model->display(trend.readings);
    m_quiet = false;
    setAccessibleName(TrendsPageWords::tableName(QString::fromStdString(trend.coupling.name)));
    fitColumns();
    scrollToTop();
}

void ReadingsTable::fitColumns()
{
    const double scale = m_look.fonts.scale;
    const QFontMetrics header{fontOf(m_look.fonts.label(), Weight::SemiBold)};
    for (int column = 0; column < kNote; ++column) {
        // The header's own hint keeps room for an arrow in every column; here only the sorted one has it.
        const int heading =
            header.horizontalAdvance(m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
        const int room =
            heading +
            static_cast<int>((column == horizontalHeader()->sortIndicatorSection() ? 36 : 20) * scale);
        const int fitting = std::max(room, sizeHintForColumn(column) + static_cast<int>(4 * scale));
        setColumnWidth(column, std::min(fitting, static_cast<int>(260 * scale)));
    }
}

void ReadingsTable::chooseReading(int index)
{
    m_quiet = true;
    if (index < 0) {
        clearSelection();
        setCurrentIndex({});
    } else {
        const QModelIndex there = m_order->mapFromSource(m_model->index(index, 0));
        setCurrentIndex(there);
        scrollTo(there);
    }
    m_quiet = false;
}

QString ReadingsTable::chosenAsText() const
{
    QModelIndexList rows = selectionModel()->selectedRows();
    if (rows.isEmpty())
        return {};
    std::ranges::sort(rows, {}, &QModelIndex::row);
    QStringList lines;
    QStringList cells;
    for (int column = 0; column < kReadingColumns; ++column)
        cells << m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    lines << cells.join(QLatin1Char('\t'));
    for (const QModelIndex& row : rows) {
        cells.clear();
        const int source = m_order->mapToSource(row).row();
        for (int column = 0; column < kReadingColumns; ++column)
            cells << m_model->copyText(static_cast<ReadingColumn>(column), source);
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void ReadingsTable::copyChosen() const
{
    const QString text = chosenAsText();
    if (!text.isEmpty())
        QGuiApplication::clipboard()->setText(text);
}

QSize ReadingsTable::sizeHint() const
{
    const double scale = m_look.fonts.scale;
    return {static_cast<int>(600 * scale), static_cast<int>(200 * scale)};
}

void ReadingsTable::keyPressEvent(QKeyEvent* event)
{
    if (event->matches(QKeySequence::Copy)) {
        copyChosen();
        return;
    }
    // Letters belong to the page: the table does not search by them.
    const bool plain = (event->modifiers() & ~Qt::ShiftModifier) == 0;
    if (plain && !event->text().isEmpty() && event->text().front().isLetterOrNumber()) {
        event->ignore();
        return;
    }
    QTableView::keyPressEvent(event);
}

void ReadingsTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    if (!m_quiet && current.isValid())
        emit readingChosen(m_order->mapToSource(current).row());
}

} // namespace rig
