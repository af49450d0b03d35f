#include "app/pages/period_box.h"

#include "app/pages/day_edit.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/wording/day_words.h"
#include "app/wording/period_words.h"
#include "core/day_entry.h"

#include <QAbstractItemView>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr int kListed = 33; // characters; the open list is as wide as it needs

// What opens a row to type in, and stands in no list.
constexpr int kOtherDays = -1;
constexpr int kOtherCount = -2;

} // namespace

PeriodBox::PeriodBox(const char* listName, QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    m_list = new ChoiceBox{PeriodWords::name()}; // letters are the page's
    m_list->setObjectName(QLatin1String(listName));
    m_list->setToolTip(PeriodWords::label());
    m_list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_list->setMinimumContentsLength(kListed);
    auto* name = labelOf(PeriodWords::label(), "label");
    name->setWordWrap(false);
    name->setBuddy(m_list);
    row->addWidget(name);
    row->addWidget(m_list, 1);
    layout->addLayout(row);
    m_days = makeDays();
    layout->addWidget(m_days);
    m_count = makeCount();
    layout->addWidget(m_count);
    m_problem = labelOf({}, "problem", "periodProblem");
    m_problem->hide();
    layout->addWidget(m_problem);
    connect(m_list, &QComboBox::activated, this, &PeriodBox::take);
}

QWidget* PeriodBox::makeDays()
{
    auto* days = new QWidget;
    auto* row = new QHBoxLayout{days};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    const auto add = [&](const QString& text, const char* name) {
        auto* label = labelOf(text, "label");
        label->setWordWrap(false);
        auto* day = new DayEdit;
        day->line()->setObjectName(QLatin1String(name));
        day->line()->setAccessibleName(text);
        day->setCalendarName(text);
        label->setBuddy(day->line());
        row->addWidget(label, 0, Qt::AlignTop);
        row->addWidget(day, 1, Qt::AlignTop);
        label->setMinimumHeight(
            day->line()->sizeHint().height()); // level with the line, not with what is below
        connect(day->line(), &QLineEdit::returnPressed, this, &PeriodBox::takeDays);
        return day;
    };
    m_from = add(PeriodWords::from(), "periodFrom");
    m_to = add(PeriodWords::to(), "periodTo");
    auto* show = buttonOf(PeriodWords::show(), "periodShow");
    show->setAutoDefault(true);
    row->addWidget(show, 0, Qt::AlignTop);
    connect(show, &QPushButton::clicked, this, &PeriodBox::takeDays);
    days->hide();
    return days;
}

QWidget* PeriodBox::makeCount()
{
    auto* count = new QWidget;
    auto* row = new QHBoxLayout{count};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto* label = labelOf(PeriodWords::count(), "label");
    label->setWordWrap(false);
    m_riggings = new QLineEdit;
    m_riggings->setObjectName("periodRiggings");
    m_riggings->setAccessibleName(PeriodWords::count());
    m_riggings->setAccessibleDescription(PeriodWords::countHint());
    m_riggings->setPlaceholderText(PeriodWords::countHint());
    label->setBuddy(m_riggings);
    auto* show = buttonOf(PeriodWords::showCount(), "periodShowRiggings");
    show->setAutoDefault(true);
    row->addWidget(label);
    row->addWidget(m_riggings, 1);
    row->addWidget(show);
    connect(m_riggings, &QLineEdit::returnPressed, this, &PeriodBox::takeCount);
    connect(show, &QPushButton::clicked, this, &PeriodBox::takeCount);
    count->hide();
    return count;
}

void PeriodBox::display(const std::vector<PeriodOffer>& offers, const PeriodOffer& chosen,
                        const std::map<CouplingId, QString>& names)
{
    const bool isAnother = !chosen.isSameChoiceAs(m_chosen);
    m_offers = offers;
    m_chosen = chosen;
    m_names = names;
    m_today = offers.front().period.to;
    fill();
    if (!isAnother)
        return;
    const bool isDays = chosen.period.kind == PeriodKind::Days;
    const bool isCount = chosen.period.kind == PeriodKind::LastRiggings && !isOffered(chosen);
    m_days->setVisible(isDays);
    m_count->setVisible(isCount);
    if (isDays)
        fillDays();
    if (isCount)
        m_riggings->setText(QString::number(chosen.number));
}

bool PeriodBox::isOffered(const PeriodOffer& offer) const
{
    return std::ranges::any_of(m_offers,
                               [&offer](const PeriodOffer& one) { return one.isSameChoiceAs(offer); });
}

void PeriodBox::showCoupling(CouplingId coupling)
{
    if (m_coupling == coupling)
        return;
    m_coupling = coupling;
    fill();
}

void PeriodBox::open()
{
    m_list->setFocus();
    m_list->showPopup();
}

QString PeriodBox::nameOf(const PeriodOffer& offer) const
{
    const auto name = offer.coupling ? m_names.find(*offer.coupling) : m_names.end();
    return PeriodWords::choice(offer, name == m_names.end() ? QString{} : name->second);
}

void PeriodBox::fill()
{
    m_list->clear();
    m_listed.clear();
    const auto add = [this](const PeriodOffer& offer) {
        if (!m_listed.empty() && m_listed.back().period.kind != offer.period.kind)
            m_list->insertSeparator(m_list->count());
        m_list->addItem(nameOf(offer), static_cast<int>(m_listed.size()));
        if (offer.isSameChoiceAs(m_chosen))
            m_list->setCurrentIndex(m_list->count() - 1);
        m_listed.push_back(offer);
    };
    for (const PeriodOffer& offer : m_offers)
        if (!offer.coupling || offer.coupling == m_coupling || offer.isSameChoiceAs(m_chosen))
            add(offer);
    if (!isOffered(m_chosen))
        add(m_chosen);
    m_list->insertSeparator(m_list->count());
    m_list->addItem(PeriodWords::otherCount(), kOtherCount);
    m_list->addItem(PeriodWords::otherDays(), kOtherDays);
    m_list->view()->setMinimumWidth(m_list->view()->sizeHintForColumn(0) + 24);
}

void PeriodBox::take(int index)
{
    const int listed = m_list->itemData(index).toInt();
    if (listed == kOtherDays)
        return askDays();
    if (listed == kOtherCount)
        return askCount();
    putAway();
    choose(m_listed[static_cast<std::size_t>(listed)]);
}

void PeriodBox::putAway()
{
    m_days->hide();
    m_count->hide();
    m_problem->hide();
}

// The number that was typed last is a beginning.
void PeriodBox::askCount()
{
    putAway();
    m_count->show();
    m_riggings->setFocus();
    m_riggings->selectAll();
}

void PeriodBox::takeCount()
{
    bool isWhole = false;
    const int count = m_riggings->text().trimmed().toInt(&isWhole);
    if (!isWhole || count < 1 || count > kMostLastRiggings)
        return refuse(m_riggings, PeriodWords::countUnread(m_riggings->text()));
    m_problem->hide();
    choose(lastRiggings(count));
}

// The days that are seen are a beginning.
void PeriodBox::askDays()
{
    putAway();
    fillDays();
    m_days->show();
    m_from->line()->setFocus();
    m_from->line()->selectAll();
}

void PeriodBox::fillDays()
{
    m_from->setText(QString::fromStdString(dayText(m_chosen.period.from)));
    m_to->setText(QString::fromStdString(dayText(m_chosen.period.to)));
}

void PeriodBox::takeDays()
{
    for (DayEdit* day : {m_from, m_to})
        if (!readDay(day->text()))
            return refuse(day->line(), day->text().trimmed().isEmpty() ? DayWords::missing()
                                                                       : DayWords::unread(day->text()));
    const Day from = *readDay(m_from->text());
    const Day to = *readDay(m_to->text());
    if (from > to)
        return refuse(m_from->line(), PeriodWords::reversed());
    if (from > m_today)
        return refuse(m_from->line(), PeriodWords::dayAhead());
    m_problem->hide();
    choose(anyDays(from, std::min(to, m_today)));
}

// The list takes Enter before it is pressed, so to say: whatever had the focus at once would be pressed by
// it.
void PeriodBox::choose(const PeriodOffer& offer)
{
    emit periodChosen(offer);
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (isAncestorOf(window()->focusWidget()))
                emit left();
        },
        Qt::QueuedConnection);
}

void PeriodBox::keyPressEvent(QKeyEvent* event)
{
    if (isEnter(*event))
        return; // taken by its field
    if (event->key() != Qt::Key_Escape || (m_days->isHidden() && m_count->isHidden()))
        return QWidget::keyPressEvent(event);
    putAway();
    fill();
    m_list->setFocus();
}

void PeriodBox::refuse(QLineEdit* line, const QString& sentence)
{
    sayIn(m_problem, sentence);
    line->setFocus();
}

} // namespace rig
