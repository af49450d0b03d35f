#include "app/pages/annual/review_table.h"

#include "app/pages/annual/review_delegate.h"
#include "app/pages/annual/review_model.h"
#include "app/widgets/parts.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>
#include <array>
#include <cmath>

namespace rig {

namespace {

// At the usual text size; the last column takes the rest. Where there is little, the band gives way first,
// then the open questions, which are also the first of the signs, then the other columns; at last the band is
// left out, whose verdict stands beside the name, and how far the gap came, which stands among the figures.
struct ColumnWidth
{
    double usual = 0;
    double least = 0;
};
constexpr std::array<ColumnWidth, kAnnualColumns - 1> kWidths{
    {{196, 150}, {168, 96}, {138, 108}, {92, 84}, {84, 78}, {122, 116}, {88, 88}}};
constexpr int kBand = static_cast<int>(AnnualColumn::Band);
constexpr int kExcursion = static_cast<int>(AnnualColumn::Excursion);
constexpr int kMoved = static_cast<int>(AnnualColumn::Moved);
constexpr int kQuestions = static_cast<int>(AnnualColumn::Questions);
constexpr int kLast = kAnnualColumns - 1;
constexpr double kWidestBand = 280;
constexpr double kEnoughForSigns = 420;
constexpr double kLeastSigns = 190;
constexpr double kNarrowestSigns = 150;
constexpr double kHeaderMargins = 18; // of the style sheet, both sides

using Widths = std::array<ColumnWidth, kAnnualColumns - 1>;

// A language may have longer names for what the columns show.
Widths widthsWanted(const ReviewModel& model, const FontSizes& fonts)
{
    const QFontMetricsF metrics{fontOf(fonts.label(), Weight::SemiBold)};
    Widths widths = kWidths;
    for (int column = 0; column < kLast; ++column) {
        const QString name = model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        const double needed = metrics.size(0, name).width() / fonts.scale + kHeaderMargins;
        ColumnWidth& width = widths[static_cast<std::size_t>(column)];
        width = {std::max(width.usual, needed), std::max(width.least, needed)};
    }
    return widths;
}

// All columns side by side in so much room; a hidden one has no width.
std::array<double, kAnnualColumns> widthsIn(double room, const Widths& wanted)
{
    std::array<double, kAnnualColumns> widths{};
    double left = room;
    for (std::size_t column = 0; column < wanted.size(); ++column) {
        widths[column] = wanted[column].usual;
        left -= widths[column];
    }
    const auto take = [&](int column, double width) {
        double& now = widths[static_cast<std::size_t>(column)];
        left += now - width;
        now = width;
    };
    if (left > kEnoughForSigns)
        take(kBand, std::min(kWidestBand, wanted[kBand].usual + left - kEnoughForSigns));
    else if (left < kLeastSigns)
        take(kBand, std::max(wanted[kBand].least, wanted[kBand].usual - (kLeastSigns - left)));
    if (left < kLeastSigns)
        take(kQuestions, 0);
    for (int column = 0; column < kLast; ++column)
        if (left < kLeastSigns && column != kQuestions)
            take(column, std::max(wanted[static_cast<std::size_t>(column)].least,
                                  widths[static_cast<std::size_t>(column)] - (kLeastSigns - left)));
    for (const int column : {kBand, kExcursion})
        if (left < kNarrowestSigns)
            take(column, 0);
    widths[kLast] = std::max(left, kNarrowestSigns);
    return widths;
}

} // namespace

ReviewTable::ReviewTable(QWidget* parent)
    : QTableView{parent}, m_model{new ReviewModel{this}}, m_delegate{new ReviewDelegate{*m_model, this}}
{
    setModel(m_model);
    setItemDelegate(m_delegate);
    setObjectName("reviewTable");
    setProperty("flat", true);
    setAccessibleName(AnnualWords::tableName());
    setAccessibleDescription(AnnualWords::tableKeys());
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    viewport()->setCursor(Qt::PointingHandCursor);
    verticalHeader()->hide();
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSortIndicatorClearable(true);
    setSortingEnabled(true);
    sortByColumn(-1, Qt::AscendingOrder);
    connect(m_model, &ReviewModel::layoutChanged, this, &ReviewTable::fit);
    connect(this, &QTableView::clicked, this, &ReviewTable::open);
}

void ReviewTable::setLook(const Look& look)
{
    m_look = look;
    m_delegate->setLook(look);
    fit();
}

void ReviewTable::display(const std::vector<AnnualRow>& rows)
{
    const CouplingId chosen = m_chosen;
    m_model->display(rows);
    keepChosen(chosen);
    fit();
}

void ReviewTable::chooseFirst()
{
    keepChosen({});
}

void ReviewTable::keepChosen(CouplingId coupling)
{
    const int row = std::max(0, m_model->find(coupling));
    if (row < m_model->rowCount()) {
        setCurrentIndex(m_model->index(row, 0));
        m_chosen = m_model->rowAt(row).coupling;
    }
}

void ReviewTable::fit()
{
    const double scale = m_look.fonts.scale;
    const auto widths = widthsIn(viewport()->width() / scale, widthsWanted(*m_model, m_look.fonts));
    for (int column = 0; column < kAnnualColumns; ++column) {
        const double width = widths[static_cast<std::size_t>(column)];
        setColumnHidden(column, width <= 0);
        setColumnWidth(column, static_cast<int>(width * scale));
    }
    int height = horizontalHeader()->sizeHint().height() + 2;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const int high = m_delegate->heightOf(m_model->rowAt(row), columnWidth(0), columnWidth(kMoved),
                                              columnWidth(kLast));
        setRowHeight(row, high);
        height += high;
    }
    if (horizontalHeader()->length() > viewport()->width())
        height += horizontalScrollBar()->sizeHint().height();
    setFixedHeight(height);
}

void ReviewTable::open(const QModelIndex& index)
{
    if (!index.isValid())
        return;
    m_chosen = m_model->rowAt(index.row()).coupling;
    emit couplingOpened(m_chosen);
}

// The first time the most first, the other way round after that: the least first only for names.
void ReviewTable::sortBy(int column)
{
    const QHeaderView* header = horizontalHeader();
    const bool again = header->sortIndicatorSection() == column;
    const Qt::SortOrder first = column == 0 || column == kLast ? Qt::AscendingOrder : Qt::DescendingOrder;
    const Qt::SortOrder other = first == Qt::AscendingOrder ? Qt::DescendingOrder : Qt::AscendingOrder;
    sortByColumn(column, again && header->sortIndicatorOrder() == first ? other : first);
}

void ReviewTable::keyPressEvent(QKeyEvent* event)
{
    if (currentIndex().isValid())
        m_chosen = m_model->rowAt(currentIndex().row()).coupling;
    const bool plain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
    const QString text = plain ? event->text() : QString{};
    if (isEnter(*event)) {
        open(currentIndex());
    } else if (!text.isEmpty() && text.front() >= QLatin1Char('0') &&
               text.front() <= QLatin1Char('0' + kAnnualColumns)) {
        if (text.front() == QLatin1Char('0'))
            sortByColumn(-1, Qt::AscendingOrder);
        else
            sortBy(text.front().digitValue() - 1);
    } else if (event->key() == Qt::Key_PageUp || event->key() == Qt::Key_PageDown ||
               (!text.isEmpty() && text.front().isLetterOrNumber())) {
        event->ignore();
    } else if (event->key() == Qt::Key_Home || event->key() == Qt::Key_End) {
        const int row = event->key() == Qt::Key_Home ? 0 : m_model->rowCount() - 1;
        setCurrentIndex(m_model->index(row, 0));
    } else {
        QTableView::keyPressEvent(event);
        if (currentIndex().isValid())
            m_chosen = m_model->rowAt(currentIndex().row()).coupling;
    }
}

void ReviewTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    if (!current.isValid())
        return;
    m_chosen = m_model->rowAt(current.row()).coupling;
    emit couplingChosen(m_chosen);
}

void ReviewTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fit();
}

void ReviewTable::wheelEvent(QWheelEvent* event)
{
    event->ignore(); // all rows are there: the page scrolls
}

} // namespace rig
