#include "app/pages/period_box.h"

#include "app/pages/day_edit.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
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

// Days of their own, and what stands in no list.
constexpr int kOtherDays = -1;

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
        row->addWidget(label);
        row->addWidget(day, 1);
        connect(day->line(), &QLineEdit::returnPressed, this, &PeriodBox::takeDays);
        return day;
    };
    m_from = add(PeriodWords::from(), "periodFrom");
    m_to = add(PeriodWords::to(), "periodTo");
    auto* show = buttonOf(PeriodWords::show(), "periodShow");
    show->setAutoDefault(true);
    row->addWidget(show);
    connect(show, &QPushButton::clicked, this, &PeriodBox::takeDays);
    days->hide();
    return days;
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
    const bool isDays = chosen.period.kind == PeriodKind::Days;
    if (isAnother)
        m_days->setVisible(isDays);
    if (isAnother && isDays)
        fillDays();
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
    if (m_chosen.period.kind == PeriodKind::Days)
        add(m_chosen);
    m_list->insertSeparator(m_list->count());
    m_list->addItem(PeriodWords::otherDays(), kOtherDays);
    m_list->view()->setMinimumWidth(m_list->view()->sizeHintForColumn(0) + 24);
}

void PeriodBox::take(int index)
{
    const int listed = m_list->itemData(index).toInt();
    if (listed == kOtherDays)
        return askDays();
    m_days->hide();
    m_problem->hide();
    choose(m_listed[static_cast<std::size_t>(listed)]);
}

// The days that are seen are a beginning.
void PeriodBox::askDays()
{
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
        if (!parseDay(day->text().trimmed().toStdString()))
            return refuse(day, PeriodWords::dayUnread(day->text()));
    const Day from = *parseDay(m_from->text().trimmed().toStdString());
    const Day to = *parseDay(m_to->text().trimmed().toStdString());
    if (from > to)
        return refuse(m_from, PeriodWords::reversed());
    if (from > m_today)
        return refuse(m_from, PeriodWords::dayAhead());
    m_problem->hide();
    choose({{from, std::min(to, m_today), {}, false, to >= m_today, PeriodKind::Days}});
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
    if (event->key() != Qt::Key_Escape || m_days->isHidden())
        return QWidget::keyPressEvent(event);
    m_days->hide();
    m_problem->hide();
    fill();
    m_list->setFocus();
}

void PeriodBox::refuse(DayEdit* day, const QString& sentence)
{
    sayIn(m_problem, sentence);
    day->line()->setFocus();
}

} // namespace rig
