#include "app/pages/setup/baseline_readings.h"

#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/setup_entries.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/plain_tip.h"
#include "app/wording/baseline_words.h"
#include "app/wording/demonstration_words.h"
#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"
#include "core/rigging/time_known.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

enum Column { When, ReadingColumn, PersonColumn, GaugeColumn, State, Columns };

constexpr int kMostLines = 12; // more are scrolled to

bool mayBeChanged(const BaselineReadingRow& row)
{
    return !row.correctedBy && !row.excluded;
}

} // namespace

BaselineReadings::BaselineReadings(Kind kind, QWidget* parent) : QFrame{parent}, m_kind{kind}
{
    setProperty("card", true);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(16, 14, 16, 14);
    layout->setSpacing(8);
    layout->addWidget(labelOf(BaselineWords::readingsSoFar(), "section"));
    buildTable();
    layout->addWidget(m_table);
    m_correct = buttonOf(BaselineWords::correct(), "correctReading");
    connect(m_correct, &QPushButton::clicked, this, &BaselineReadings::askCorrection);
    layout->addWidget(m_correct, 0, Qt::AlignLeft);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    m_exclude = buttonOf(BaselineWords::exclude(), "excludeReading");
    m_by = new ChoiceBox{BaselineWords::excludedBy()};
    m_by->setObjectName("excludedBy");
    m_by->setAccessibleDescription(m_by->accessibleName()); // no label says it
    connect(m_exclude, &QPushButton::clicked, this, &BaselineReadings::askExclusion);
    row->addWidget(m_exclude);
    row->addWidget(m_by);
    row->addStretch(1);
    layout->addLayout(row);
    m_note = labelOf({}, "caution", "readingsNote");
    m_note->hide();
    layout->addWidget(m_note);
    m_exclude->setVisible(kind == Kind::Baseline);
    m_by->setVisible(kind == Kind::Baseline);
}

void BaselineReadings::buildTable()
{
    m_table = new QTableWidget{0, Columns};
    m_table->setObjectName("readings");
    m_table->setAccessibleName(BaselineWords::readingsSoFar());
    const bool demonstration = m_kind == Kind::Demonstration;
    m_table->setHorizontalHeaderLabels(
        {BaselineWords::columnWhen(), BaselineWords::columnReading(),
         demonstration ? DemonstrationWords::columnOwner() : BaselineWords::columnPerson(),
         BaselineWords::columnGauge(), BaselineWords::columnState()});
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(State, QHeaderView::Stretch);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(true);
    m_table->setTextElideMode(Qt::ElideNone);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
}

void BaselineReadings::display(const std::vector<BaselineReadingRow>& rows,
                               const std::vector<Person>& persons, bool frozen, Day today)
{
    m_rows = rows;
    std::ranges::reverse(m_rows); // the newest is looked for most
    m_today = today;
    m_table->clearSelection();
    m_table->setCurrentCell(-1, -1);
    m_table->setRowCount(static_cast<int>(m_rows.size()));
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        fill(static_cast<int>(i), m_rows[i]);
    fillPeople(m_by, BaselineWords::excludedBy(), persons, {});
    const bool any = std::ranges::any_of(m_rows, mayBeChanged);
    m_correct->setEnabled(any && !frozen);
    m_exclude->setEnabled(any && !frozen);
    m_by->setEnabled(any && !frozen);
    sayIn(m_note, frozen ? BaselineWords::rowIsFrozen() : QString{});
    fitRows();
}

QString BaselineReadings::stateOf(const BaselineReadingRow& row) const
{
    const QString reason = shown(row.reading.note);
    if (row.correctedBy)
        return BaselineWords::correctedBecause(shown(*row.correctedBy));
    if (row.excluded)
        return BaselineWords::leftOutBecause(shown(row.excludedBy), shown(*row.excluded));
    if (m_kind == Kind::Demonstration)
        return DemonstrationWords::note(reason, QString::fromStdString(row.second));
    QString state = row.inDoubtFrom ? BaselineWords::inDoubt(Formats{}.day(*row.inDoubtFrom))
                    : row.unlike    ? BaselineWords::unlikeTheOthers()
                    : row.admitted  ? BaselineWords::inTheBand()
                                    : BaselineWords::doesNotCount();
    if (row.reading.corrects)
        state = BaselineWords::inOneLine(state, BaselineWords::correctionBecause(reason));
    return state;
}

void BaselineReadings::fill(int line, const BaselineReadingRow& row)
{
    const Formats formats;
    const QString gauge = row.gauge.empty() ? BaselineWords::gaugeNotKnown() : shown(row.gauge);
    const Moment& taken = row.reading.when;
    // On two lines, so that the last column keeps its room.
    QString when = formats.day(taken.localDay());
    if (isTimeKnown(row.reading))
        when = taken.localDay() == m_today ? BaselineWords::today(formats.time(taken))
                                           : when + QLatin1Char('\n') + formats.time(taken);
    const QStringList texts{when, formats.interval(row.reading.interval), shown(row.person), gauge,
                            stateOf(row)};
    for (int column = 0; column < Columns; ++column) {
        auto* item = new QTableWidgetItem{texts[column]};
        item->setToolTip(plainTip(texts[column]));
        const bool isStruck = !mayBeChanged(row) && column != State;
        item->setData(
            Qt::AccessibleTextRole,
            SentenceParts::cell(m_table->horizontalHeaderItem(column)->text(), texts[column], isStruck));
        if (isStruck) {
            QFont struck;
            struck.setStrikeOut(true);
            item->setFont(struck);
        }
        m_table->setItem(line, column, item);
    }
}

// The one chosen in the list, else the newest that may still be changed. Null: says why in the note.
const BaselineReadingRow* BaselineReadings::chosenRow()
{
    const int line = m_table->currentRow();
    if (line >= 0) {
        const BaselineReadingRow& row = m_rows[static_cast<std::size_t>(line)];
        sayLack(mayBeChanged(row) ? QString{} : BaselineWords::rowIsDone(), m_table);
        return mayBeChanged(row) ? &row : nullptr;
    }
    const auto newest = std::ranges::find_if(m_rows, mayBeChanged);
    sayLack(newest == m_rows.end() ? BaselineWords::chooseRow() : QString{}, m_table);
    return newest == m_rows.end() ? nullptr : &*newest;
}

bool BaselineReadings::takeKey(QKeyEvent* event)
{
    if (isKey(*event, BaselineWords::keyCorrect()))
        return askCorrection(), true;
    if (m_kind == Kind::Baseline && isKey(*event, BaselineWords::keyExclude()))
        return askExclusion(), true;
    return false;
}

void BaselineReadings::say(const QString& sentence)
{
    sayLack(sentence, m_note);
}

void BaselineReadings::sayLack(const QString& sentence, QWidget* next)
{
    sayIn(m_note, sentence);
    if (!sentence.isEmpty())
        emit lackSaid(m_note, next);
}

void BaselineReadings::askCorrection()
{
    if (!m_correct->isEnabled())
        return;
    if (const BaselineReadingRow* row = chosenRow())
        emit correctionAsked(BaselineReadingRow{*row});
}

void BaselineReadings::askExclusion()
{
    if (!m_exclude->isEnabled())
        return;
    const BaselineReadingRow* row = chosenRow();
    if (!row)
        return;
    if (const auto by = m_by->chosen<PersonId>()) {
        emit exclusionAsked(BaselineReadingRow{*row}, *by);
        return;
    }
    m_by->setFocus();
    sayLack(BaselineWords::chooseExcluder(), m_by);
}

void BaselineReadings::fitRows()
{
    m_table->resizeRowsToContents();
    int height = m_table->horizontalHeader()->sizeHint().height() + 2 * m_table->frameWidth() + 2;
    for (int line = 0; line < std::min(m_table->rowCount(), kMostLines); ++line)
        height += m_table->rowHeight(line);
    m_table->setFixedHeight(height);
}

void BaselineReadings::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    fitRows();
}

void BaselineReadings::changeEvent(QEvent* event)
{
    QFrame::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange)
        fitRows();
}

} // namespace rig
