#include "app/pages/rigged_today/close_panel.h"

#include "app/pages/rigged_today/labelled_choice.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/stop_card.h"
#include "app/widgets/announcer.h"
#include "app/widgets/person_note.h"
#include "app/wording/connected_words.h"
#include "app/wording/rigged_words.h"
#include "core/airframe/name_in.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

bool isEverythingEverywhere(const RecordReview& review)
{
    return std::ranges::all_of(review.couplings,
                               [](const CouplingProgress& one) { return one.parts.gap && one.parts.pull; });
}

// Without what the second person is still to find for themselves; that they have yet to do it is told.
std::vector<OpenItem> itemsTold(const RiggedTodayView& view, const RiggingSession& session)
{
    std::vector<OpenItem> told = view.review.openItems;
    for (const CouplingNow& one : view.now->couplings)
        if (isHiddenNow(session, *view.now, one.id))
            std::erase_if(told, [name = nameIn(view.couplings, one.id)](const OpenItem& item) {
                return item.isAFinding() && item.name == name;
            });
    return told;
}

} // namespace

ClosePanel::ClosePanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(28, 24, 28, 24);
    layout->setSpacing(10);
    layout->addWidget(labelOf(RiggedWords::closeTitle(), "title"));
    m_stop = new StopCard;
    layout->addWidget(m_stop);
    m_heading = labelOf(RiggedWords::openHeading(), "section");
    m_open = labelOf({}, "body");
    m_open->setObjectName("openItems");
    layout->addWidget(m_heading);
    layout->addWidget(m_open);
    m_tools = new WrapCheck{RiggedWords::tick(TickKind::ToolsOut)};
    m_tools->setObjectName("toolsCounted");
    m_hatches = new WrapCheck{RiggedWords::tick(TickKind::HatchesOn)};
    m_hatches->setObjectName("hatchesOn");
    layout->addWidget(m_tools);
    layout->addWidget(m_hatches);
    addNames(layout);
    m_problem = labelOf({}, "problem");
    m_problem->setObjectName("closeProblem");
    m_close = new QPushButton;
    m_close->setProperty("kind", "primary");
    m_close->setObjectName("closeRecord");
    m_close->setAutoDefault(true);
    auto* end = new QHBoxLayout; // a refusal beside the button leaves it where it is pressed
    end->setSpacing(14);
    end->addWidget(m_close, 0, Qt::AlignTop);
    end->addWidget(m_problem, 1);
    layout->addLayout(end);
    layout->addWidget(labelOf(RiggedWords::cautionLast(), "soft"));
    layout->addStretch(1);
    connect(m_close, &QPushButton::clicked, this, &ClosePanel::tryToClose);
    // What was refused is put right: the refusal is not of what stands there now.
    for (const ChoiceBox* box : {m_first, m_second})
        connect(box, &QComboBox::currentIndexChanged, m_problem, &QLabel::clear);
    for (const WrapCheck* box : {m_tools, m_hatches})
        connect(box, &QCheckBox::toggled, m_problem, &QLabel::clear);
}

void ClosePanel::addNames(QVBoxLayout* layout)
{
    layout->addWidget(labelOf(RiggedWords::twoNames(), "body"));
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft);
    m_first = new ChoiceBox{RiggedWords::firstName()};
    m_first->setObjectName("closeFirst");
    m_second = new ChoiceBox{RiggedWords::secondName()};
    m_second->setObjectName("closeSecond");
    m_note = new QLineEdit;
    m_note->setObjectName("closeNote");
    m_note->setPlaceholderText(RiggedWords::noteHint());
    m_note->setAccessibleName(RiggedWords::noteLabel());
    m_firstStands = new PersonNote{"closeFirstStanding"};
    m_secondStands = new PersonNote{"closeSecondStanding"};
    const auto addChoice = [form](const QString& text, ChoiceBox* box, PersonNote* stands) {
        auto* label = new QLabel{text};
        label->setBuddy(box);
        form->addRow(label, besideEachOther(box, stands));
    };
    addChoice(RiggedWords::firstName(), m_first, m_firstStands);
    addChoice(RiggedWords::secondName(), m_second, m_secondStands);
    connect(m_first, &QComboBox::currentIndexChanged, this, &ClosePanel::showStandings);
    connect(m_second, &QComboBox::currentIndexChanged, this, &ClosePanel::showStandings);
    form->addRow(RiggedWords::noteLabel(), m_note);
    layout->addLayout(form);
    m_led = labelOf({}, "caution", "closeLed");
    layout->addWidget(m_led);
    m_led->hide();
    m_apart = labelOf({}, "caution", "closeIndependence");
    layout->addWidget(m_apart);
    m_apart->hide();
    connect(m_first, &QComboBox::currentIndexChanged, this, &ClosePanel::sayWhoLed);
    connect(m_second, &QComboBox::currentIndexChanged, this, &ClosePanel::sayWhetherIndependent);
}

void ClosePanel::showStandings()
{
    const auto show = [this](PersonNote* note, const ChoiceBox* box) {
        const auto person = box->chosen<PersonId>();
        const auto found = person ? m_people.find(*person) : m_people.end();
        note->show(found == m_people.end() ? std::nullopt : std::optional{found->second});
    };
    show(m_firstStands, m_first);
    show(m_secondStands, m_second);
}

void ClosePanel::setLook(const Look& look)
{
    m_stop->setLook(look);
    m_firstStands->setLook(look);
    m_secondStands->setLook(look);
}

// The paper names both.
void ClosePanel::sayWhoLed()
{
    const auto first = m_first->chosen<PersonId>();
    sayIn(m_led, first && m_leader && *first != m_leader->id
                     ? RiggedWords::ledByAnother(QString::fromStdString(m_leader->name))
                     : QString{});
}

// What the paper will say of the second name, before it is given.
void ClosePanel::sayWhetherIndependent()
{
    QStringList lines;
    if (const auto second = m_second->chosen<PersonId>()) {
        const QString name = m_second->currentText();
        const Independence found = independenceOf(*second, m_sides);
        for (const Side side : found.connected)
            lines << ConnectedWords::nobodyIndependent(side, name);
        if (lines.isEmpty() && !found.unknown.empty())
            lines << ConnectedWords::notKnownWhetherIndependent(name);
        if (std::ranges::find(m_seconds, *second) == m_seconds.end())
            lines << ConnectedWords::didNoSecondLook(name);
    }
    sayIn(m_apart, lines.join('\n'));
}

void ClosePanel::showOpen(const RiggedTodayView& view, const RiggingSession& session)
{
    const std::vector<OpenItem> items = itemsTold(view, session);
    const auto undone = std::ranges::find_if_not(items, &OpenItem::stops); // what stops stands before it
    const QStringList stops = RiggedWords::openLines({items.begin(), undone}, QString::fromStdString);
    if (!stops.isEmpty())
        m_stop->say(stops.join('\n'), stopAdvice(view));
    m_stop->setVisible(!stops.isEmpty());
    QStringList lines = RiggedWords::openLines({undone, items.end()}, QString::fromStdString);
    for (QString& line : lines)
        line.prepend(QStringLiteral("•  "));
    m_heading->setVisible(!lines.isEmpty());
    m_heading->setText(view.review.mayCloseComplete() ? RiggedWords::listedHeading()
                                                      : RiggedWords::openHeading());
    m_open->setText(items.empty() ? RiggedWords::nothingOpen(isEverythingEverywhere(view.review))
                                  : lines.join('\n'));
}

void ClosePanel::display(const RiggedTodayView& view, const RiggingSession& session)
{
    showOpen(view, session);
    m_close->setText(view.review.mayCloseComplete() ? RiggedWords::closeComplete()
                                                    : RiggedWords::closeLeftOpen());
    const auto leader = std::ranges::find(view.persons, view.record->leader, &Person::id);
    m_leader = leader == view.persons.end() ? std::nullopt : std::optional{*leader};
    m_sides = view.now->sides;
    m_seconds = view.now->seconds;
    m_people = view.people;
    showStandings();
    sayWhoLed();
    sayWhetherIndependent();
    if (m_record == view.record->id)
        return;
    m_record = view.record->id;
    m_tools->setChecked(false);
    m_hatches->setChecked(false);
    m_note->clear();
    m_problem->clear();
    for (ChoiceBox* box : {m_first, m_second}) {
        box->begin(RiggedWords::choosePerson());
        for (const Person& person : view.persons)
            box->add(QString::fromStdString(person.name), person.id);
    }
}

void ClosePanel::tryToClose()
{
    const auto first = m_first->chosen<PersonId>();
    const auto second = m_second->chosen<PersonId>();
    QString problem;
    if (!m_tools->isChecked() || !m_hatches->isChecked())
        problem = RiggedWords::toolsMissing();
    else if (!first || !second)
        problem = RiggedWords::namesMissing();
    else if (*first == *second)
        problem = RiggedWords::namesMustDiffer();
    m_problem->setText(problem);
    announceAnew(*m_problem, problem);
    if (problem.isEmpty())
        emit closeAsked(*first, *second, m_note->text().trimmed(), {TickKind::ToolsOut, TickKind::HatchesOn});
}

} // namespace rig
