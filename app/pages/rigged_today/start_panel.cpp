#include "app/pages/rigged_today/start_panel.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/person_note.h"
#include "app/wording/formats.h"
#include "app/wording/paper_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/summary_words.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cstdlib>
#include <utility>
#include <vector>

namespace rig {

namespace {

// Whole degrees; empty where nothing is typed. False where it is neither.
bool readCelsius(const QString& typed, std::optional<int>& celsius)
{
    constexpr int kFarthest = 60; // either side of freezing
    const QString text = typed.trimmed().replace(QChar{0x2212}, QLatin1Char('-'));
    if (text.isEmpty())
        return true;
    bool isNumber = false;
    const int read = text.toInt(&isNumber);
    if (!isNumber || std::abs(read) > kFarthest)
        return false;
    celsius = read;
    return true;
}

// One line for each event, with the couplings that it was about.
QString wholeChecksIn(const RiggedTodayView& view)
{
    std::vector<std::pair<Event, QStringList>> events;
    for (const Coupling& coupling : view.couplings) {
        const auto asked = view.wholeChecks.find(coupling.id);
        if (asked == view.wholeChecks.end())
            continue;
        auto known = std::ranges::find_if(
            events, [&asked](const auto& one) { return one.first.id == asked->second.id; });
        if (known == events.end())
            known = events.insert(events.end(), {asked->second, {}});
        known->second << QString::fromStdString(coupling.name);
    }
    QStringList lines;
    for (const auto& [event, couplings] : events)
        lines << RiggedWords::wholeCheckOf(couplings, event.kind, Formats{}.day(event.day));
    return lines.join(QLatin1Char('\n'));
}

// Nothing was begun or closed in between: what was chosen still answers what is asked.
bool isSameStart(const RiggedTodayView& one, const RiggedTodayView& other)
{
    const auto recordOf = [](const RiggedTodayView& view) {
        return view.record ? std::optional{view.record->id} : std::nullopt;
    };
    const auto closedOf = [](const RiggedTodayView& view) {
        return view.lastClose ? std::optional{view.lastClose->when} : std::nullopt;
    };
    return one.airframe.id == other.airframe.id && recordOf(one) == recordOf(other) &&
           closedOf(one) == closedOf(other) && one.mayStandRigged == other.mayStandRigged;
}

} // namespace

QString StartPanel::missingIn(const RiggedTodayView& view)
{
    if (view.couplings.empty())
        return RiggedWords::noCouplings();
    if (view.persons.size() < 2)
        return RiggedWords::noPeople();
    if (view.gauges.empty() && std::ranges::any_of(view.couplings, hasGap))
        return RiggedWords::noGauges();
    return {};
}

StartPanel::StartPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(28, 24, 28, 24);
    layout->setSpacing(12);
    layout->addWidget(labelOf(RiggedWords::startTitle(), "title"));
    layout->addWidget(labelOf(RiggedWords::startSentence(), "body"));
    m_last = labelOf({}, "soft");
    m_last->setObjectName("lastRecord");
    layout->addWidget(m_last);
    m_showLast = buttonOf(SummaryWords::showLast(), "showLastRecord");
    connect(m_showLast, &QPushButton::clicked, this, &StartPanel::lastRecordAsked);
    layout->addWidget(m_showLast, 0, Qt::AlignLeft);
    addNotes(layout);
    m_whole = labelOf({}, "caution", "wholeChecks");
    layout->addWidget(m_whole);
    addSince(layout);
    m_missing = labelOf({}, "caution");
    m_missing->setObjectName("startMissing");
    layout->addWidget(m_missing);
    auto* label = labelOf(RiggedWords::leader(), "label");
    m_leader = new ChoiceBox{RiggedWords::leader()};
    m_leader->setObjectName("leader");
    label->setBuddy(m_leader);
    layout->addWidget(label);
    auto* led = new QHBoxLayout;
    led->setSpacing(14);
    m_standing = new PersonNote{"leaderStanding"};
    led->addWidget(m_leader);
    led->addWidget(m_standing, 1);
    led->addStretch(0);
    layout->addLayout(led);
    connect(m_leader, &QComboBox::currentIndexChanged, this, &StartPanel::showStanding);
    auto* cold = labelOf(RiggedWords::celsius(), "label");
    m_celsius = new QLineEdit;
    m_celsius->setObjectName("celsius");
    m_celsius->setAccessibleName(RiggedWords::celsius());
    m_celsius->setToolTip(RiggedWords::celsiusWhy());
    m_celsius->setMaximumWidth(12 * m_celsius->fontMetrics().averageCharWidth());
    cold->setBuddy(m_celsius);
    layout->addWidget(cold);
    layout->addWidget(m_celsius, 0, Qt::AlignLeft);
    m_begin = new QPushButton{RiggedWords::begin()};
    m_begin->setProperty("kind", "primary");
    m_begin->setObjectName("begin");
    m_begin->setAutoDefault(true);
    layout->addWidget(m_begin, 0, Qt::AlignLeft);
    layout->addWidget(labelOf(RiggedWords::cautionLast(), "soft"));
    m_apart = buttonOf(RiggedWords::takenApartToday(), "takenApart");
    m_apart->setToolTip(RiggedWords::takenApartWhy());
    connect(m_apart, &QPushButton::clicked, this, &StartPanel::sayTakenApart);
    layout->addSpacing(12);
    layout->addWidget(m_apart, 0, Qt::AlignLeft);
    auto* paper = buttonOf(PaperWords::enter(), "enterFromPaper");
    paper->setToolTip(PaperWords::enterWhy());
    connect(paper, &QPushButton::clicked, this, &StartPanel::paperAsked);
    m_paper = paper;
    layout->addWidget(paper, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_begin, &QPushButton::clicked, this, &StartPanel::begin);
}

void StartPanel::addSince(QVBoxLayout* layout)
{
    m_since = new QWidget;
    auto* column = new QVBoxLayout{m_since};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(labelOf(RiggedWords::sinceThen(), "label"));
    m_anew = new QRadioButton{RiggedWords::riggedAnew()};
    m_anew->setObjectName("riggedAnew");
    m_stood = new QRadioButton{RiggedWords::stoodRigged()};
    m_stood->setObjectName("stoodRigged");
    column->addWidget(m_anew);
    column->addWidget(m_stood);
    layout->addWidget(m_since);
}

void StartPanel::addNotes(QVBoxLayout* layout)
{
    auto* card = new QFrame;
    m_notes = card;
    card->setObjectName("notesLeft");
    card->setProperty("card", true);
    auto* column = new QVBoxLayout{card};
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(8);
    column->addWidget(labelOf(RiggedWords::notesTitle(), "label"));
    m_notesText = labelOf({}, "body", "notesText");
    column->addWidget(m_notesText);
    m_read = buttonOf(RiggedWords::noteRead(), "noteRead");
    m_read->setToolTip(RiggedWords::noteReadWhy());
    connect(m_read, &QPushButton::clicked, this, &StartPanel::sayRead);
    column->addWidget(m_read, 0, Qt::AlignLeft);
    layout->addWidget(card);
}

// All that nobody has read, however many riggings ago it was left; long lists by their newest.
void StartPanel::showNotes()
{
    const Formats formats;
    QStringList lines;
    for (const NoteLeft& note : m_view.notes) {
        if (static_cast<std::size_t>(lines.size()) == kNotesShown) {
            lines << RiggedWords::moreNotes(static_cast<int>(m_view.notes.size() - kNotesShown));
            break;
        }
        lines << RiggedWords::noteLeft(formats.day(note.when.localDay()), QString::fromStdString(note.first),
                                       QString::fromStdString(note.second),
                                       QString::fromStdString(note.text));
    }
    m_notesText->setText(lines.join(QLatin1Char('\n')));
    m_notes->setVisible(!lines.isEmpty());
}

void StartPanel::sayRead()
{
    if (const auto person = m_leader->chosen<PersonId>())
        return emit noteReadAsked(*person);
    sayIn(m_missing, RiggedWords::chooseWhoRead());
    m_leader->setFocus();
}

void StartPanel::showStanding()
{
    m_standing->show(standingOf(m_view, m_leader->chosen<PersonId>()));
}

void StartPanel::setLook(const Look& look)
{
    m_standing->setLook(look);
}

void StartPanel::begin()
{
    const auto leader = m_leader->chosen<PersonId>();
    const bool isSaid = !m_view.mayStandRigged || m_anew->isChecked() || m_stood->isChecked();
    std::optional<int> celsius;
    if (leader && isSaid && !readCelsius(m_celsius->text(), celsius)) {
        sayIn(m_missing, RiggedWords::celsiusRefused(m_celsius->text().trimmed()));
        return m_celsius->setFocus();
    }
    if (leader && isSaid) {
        const bool stood = m_view.mayStandRigged && m_stood->isChecked();
        emit beginAsked(*leader, stood ? RecordOrigin::Recheck : RecordOrigin::Rigging, celsius);
        return;
    }
    const QString noLeader =
        isSaid ? RiggedWords::chooseLeaderFirst() : RiggedWords::chooseLeaderAndSinceThen();
    sayIn(m_missing, leader ? RiggedWords::chooseSinceThen() : noLeader);
    if (leader)
        m_anew->setFocus();
    else
        m_leader->setFocus();
}

void StartPanel::sayTakenApart()
{
    if (const auto person = m_leader->chosen<PersonId>())
        return emit takenApart(*person);
    sayIn(m_missing, RiggedWords::chooseWhoTookApart());
    m_leader->setFocus();
}

void StartPanel::display(const RiggedTodayView& view)
{
    const auto chosen = m_leader->chosen<PersonId>();
    const bool isAnother = !isSameStart(m_view, view);
    m_view = view;
    const Formats formats;
    QString last;
    if (view.record && view.record->fromAnotherDay)
        last = RiggedWords::leftFromAnotherDay(formats.day(view.record->begins.localDay()));
    else if (view.lastClose)
        last = RiggedWords::lastRecord(formats.day(view.lastClose->when.localDay()), view.lastClose->closing,
                                       QString::fromStdString(view.lastClose->first),
                                       QString::fromStdString(view.lastClose->second));
    sayIn(m_last, last);
    m_showLast->setVisible(view.hasClosedRecord);
    showNotes();
    sayIn(m_whole, wholeChecksIn(view));
    m_since->setVisible(view.mayStandRigged);
    m_apart->setVisible(view.mayStandRigged);
    if (isAnother) // what was said stays, when only the look changes
        chooseNeither({m_anew, m_stood});
    sayMissing(missingIn(view));
    m_leader->begin(RiggedWords::choosePerson());
    for (const Person& person : view.persons)
        m_leader->add(QString::fromStdString(person.name), person.id);
    if (!isAnother)
        m_leader->choose(chosen);
    else
        m_celsius->clear(); // another day is not as cold
}

void StartPanel::sayMissing(const QString& missing)
{
    sayIn(m_missing, missing);
    m_leader->setEnabled(missing.isEmpty());
    m_paper->setEnabled(missing.isEmpty());
    m_begin->setEnabled(missing.isEmpty());
}

bool StartPanel::takeKey(QKeyEvent* event)
{
    if (isEnter(*event))
        return m_begin->click(), true;
    if (m_notes->isVisible() && isKey(*event, RiggedWords::keyNoteRead()))
        return m_read->click(), true;
    if (m_paper->isEnabled() && isKey(*event, PaperWords::keyEnter()))
        return emit paperAsked(), true;
    if (!m_showLast->isVisible() || !isKey(*event, SummaryWords::keyLast()))
        return false;
    emit lastRecordAsked();
    return true;
}

void StartPanel::displayNothing()
{
    m_last->hide();
    m_showLast->hide();
    m_notes->hide();
    m_whole->hide();
    m_since->hide();
    m_apart->hide();
    sayMissing(RiggedWords::noAirframe());
}

} // namespace rig
