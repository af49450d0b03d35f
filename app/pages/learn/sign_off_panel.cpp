#include "app/pages/learn/sign_off_panel.h"

#include "app/pages/day_edit.h"
#include "app/pages/learn/labelled.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/wording/formats.h"
#include "app/wording/signing_words.h"
#include "core/day_entry.h"

#include <QGridLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

QSpinBox* monthsOf(const char* name, int value)
{
    auto* box = new QSpinBox;
    box->setObjectName(QLatin1String(name));
    box->setRange(1, 120);
    box->setValue(value);
    return box;
}

} // namespace

SignOffPanel::SignOffPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    m_title = labelOf({}, "title", "signOffTitle");
    m_standing = labelOf({}, "section", "signOffStanding");
    m_by = labelOf({}, "body", "signOffBy");
    m_last = labelOf({}, "soft", "signOffLast");
    m_kept = labelOf({}, "label", "signOffKept");
    m_kept->hide();
    m_asked = labelOf({}, "body", "signOffAsked");
    for (QWidget* one :
         {m_title, m_standing, m_by, m_last, m_kept, labelOf(SigningWords::askedFor(), "label"), m_asked,
          labelOf(SigningWords::whoSignsDecides(), "soft")})
        layout->addWidget(one);
    buildSupervised(layout);
    buildSign(layout);
    m_historyTitle = labelOf(SigningWords::history(), "label");
    m_history = labelOf({}, "body", "signOffHistory");
    layout->addWidget(m_historyTitle);
    layout->addWidget(m_history);
    layout->addStretch(1);
}

void SignOffPanel::buildSupervised(QVBoxLayout* layout)
{
    layout->addWidget(labelOf(SigningWords::supervised(), "label"));
    m_rows = labelOf({}, "body", "supervisedRows");
    layout->addWidget(m_rows);
    m_noRiggings = labelOf(SigningWords::noRiggings(), "soft");
    layout->addWidget(m_noRiggings);
    m_add = new QWidget;
    auto* grid = new QGridLayout{m_add};
    grid->setContentsMargins(0, 0, 0, 0);
    m_rigging = new ChoiceBox{withoutMnemonic(SigningWords::rigging())};
    m_rigging->setObjectName("supervisedRigging");
    m_mentor = new ChoiceBox{withoutMnemonic(SigningWords::mentor())};
    m_mentor->setObjectName("supervisedMentor");
    m_supervisedNote = new QLineEdit;
    m_supervisedNote->setObjectName("supervisedNote");
    addLabelled(grid, 0, 0, SigningWords::rigging(), m_rigging);
    addLabelled(grid, 0, 1, SigningWords::mentor(), m_mentor);
    addLabelled(grid, 1, 0, SigningWords::supervisedNote(), m_supervisedNote);
    auto* keep = buttonOf(SigningWords::keep(), "keepSupervised");
    grid->addWidget(keep, 3, 1, Qt::AlignLeft);
    m_supervisedProblem = labelOf({}, "problem", "supervisedProblem");
    m_supervisedProblem->hide();
    grid->addWidget(m_supervisedProblem, 4, 0, 1, 2);
    layout->addWidget(m_add);
    connect(keep, &QPushButton::clicked, this, &SignOffPanel::keepSupervised);
}

void SignOffPanel::buildSign(QVBoxLayout* layout)
{
    m_signTitle = labelOf({}, "label", "signTitle");
    layout->addWidget(m_signTitle);
    auto* grid = new QGridLayout;
    m_signer = new ChoiceBox{withoutMnemonic(SigningWords::signer())};
    m_signer->setObjectName("signer");
    m_day = new DayEdit;
    m_day->line()->setObjectName("signDay");
    m_day->setCalendarName(withoutMnemonic(SigningWords::day()));
    m_months = monthsOf("signMonths", kSignedForMonths);
    m_rest = monthsOf("signRest", kMonthsWithoutRigging);
    m_note = new QLineEdit;
    m_note->setObjectName("signNote");
    addLabelled(grid, 0, 0, SigningWords::signer(), m_signer);
    addLabelled(grid, 0, 1, SigningWords::day(), m_day, m_day->line());
    addLabelled(grid, 1, 0, SigningWords::months(), m_months);
    addLabelled(grid, 1, 1, SigningWords::monthsWithoutRigging(), m_rest);
    addLabelled(grid, 2, 0, SigningWords::note(), m_note);
    layout->addLayout(grid);
    layout->addWidget(labelOf(SigningWords::commonPractice(), "soft"));
    auto* buttons = new QHBoxLayout;
    auto* signIt = buttonOf(SigningWords::signIt(), "signIt", "primary");
    m_withdraw = buttonOf(SigningWords::withdrawIt(), "withdrawIt");
    buttons->addWidget(signIt);
    buttons->addWidget(m_withdraw);
    buttons->addStretch(1);
    layout->addLayout(buttons);
    m_signProblem = labelOf({}, "problem", "signProblem");
    m_signProblem->hide();
    layout->addWidget(m_signProblem);
    connect(signIt, &QPushButton::clicked, this, [this] { sign(SignOffKind::Signed); });
    connect(m_withdraw, &QPushButton::clicked, this, [this] { sign(SignOffKind::Withdrawn); });
}

QString SignOffPanel::nameOf(PersonId person) const
{
    const auto found = std::ranges::find(m_view.persons, person, &Person::id);
    return found == m_view.persons.end() ? QString{} : QString::fromStdString(found->name);
}

QStringList SignOffPanel::namesOf(const std::vector<CouplingId>& couplings) const
{
    QStringList names;
    for (const CouplingId id : couplings) {
        const auto found = std::ranges::find(m_view.couplings, id, &Coupling::id);
        if (found != m_view.couplings.end())
            names << QString::fromStdString(found->name);
    }
    return names;
}

void SignOffPanel::display(const SignOffView& view)
{
    if (m_view.person != view.person)
        clearTyped();
    m_view = view;
    const Formats formats;
    m_title->setText(SigningWords::title(nameOf(view.person)));
    m_standing->setText(SigningWords::standing(view.standing));
    sayIn(m_by, view.history.empty()
                    ? QString{}
                    : SigningWords::historyRow(view.history.front(), nameOf(view.history.front().signer)));
    m_last->setText(view.lastRigging ? SigningWords::lastRigging(formats.day(*view.lastRigging))
                                     : SigningWords::noRigging());
    QStringList asked{SigningWords::supervisedCount(view.progress.supervised, kSupervisedWanted)};
    if (!view.progress.notPractised.empty())
        asked << SigningWords::notPractised(namesOf(view.progress.notPractised));
    if (!view.progress.missedLastRound.empty())
        asked << SigningWords::missed(namesOf(view.progress.missedLastRound));
    if (view.progress.notPractised.empty() && view.progress.missedLastRound.empty())
        asked << SigningWords::allPractised();
    m_asked->setText(asked.join(QLatin1Char('\n')));
    QStringList rows;
    for (const SupervisedRow& row : view.supervised)
        rows << SigningWords::supervisedRow(formats.day(row.day), nameOf(row.rigging.mentor),
                                            QString::fromStdString(row.rigging.note));
    m_rows->setText(rows.isEmpty() ? SigningWords::noneSupervised() : rows.join(QLatin1Char('\n')));
    m_add->setVisible(!view.riggings.empty());
    m_noRiggings->setVisible(view.riggings.empty());
    m_signTitle->setText(SigningWords::sign(nameOf(view.person)));
    m_withdraw->setVisible(view.standing.state == SignOffState::Signed ||
                           view.standing.state == SignOffState::Expired);
    QStringList history;
    for (const SignOff& signOff : view.history)
        history << SigningWords::historyRow(signOff, nameOf(signOff.signer));
    m_historyTitle->setVisible(!history.isEmpty());
    sayIn(m_history, history.join(QLatin1Char('\n')));
    fillBoxes();
}

void SignOffPanel::fillBoxes()
{
    std::vector<ChoiceBox::Entry> riggings;
    for (const RiggingChoice& rigging : m_view.riggings) {
        QStringList people;
        for (const PersonId person : rigging.people)
            people << nameOf(person);
        riggings.push_back(
            ChoiceBox::entry(SigningWords::riggingLine(Formats{}.day(rigging.day), people), rigging.record));
    }
    const auto rigging = m_rigging->chosen<RecordId>();
    m_rigging->fillWith(SigningWords::chooseRigging(), riggings);
    m_rigging->choose(rigging);
    std::vector<Person> others = m_view.persons;
    std::erase_if(others, [this](const Person& person) { return person.id == m_view.person; });
    const auto mentor = m_mentor->chosen<PersonId>();
    const auto signer = m_signer->chosen<PersonId>();
    m_mentor->fill(SigningWords::chooseMentor(), others);
    m_signer->fill(SigningWords::chooseSigner(), others);
    m_mentor->choose(mentor);
    m_signer->choose(signer);
}

void SignOffPanel::clearTyped()
{
    for (ChoiceBox* box : {m_rigging, m_mentor, m_signer})
        box->setCurrentIndex(0);
    for (QLineEdit* line : {m_supervisedNote, m_note})
        line->clear();
    m_day->setText({});
    m_months->setValue(kSignedForMonths);
    m_rest->setValue(kMonthsWithoutRigging);
    for (QLabel* label : {m_supervisedProblem, m_signProblem, m_kept})
        sayIn(label, {});
}

void SignOffPanel::showKept(const QString& sentence)
{
    clearTyped();
    sayIn(m_kept, sentence);
}

void SignOffPanel::keepSupervised()
{
    SupervisedEntry entry;
    entry.record = m_rigging->chosen<RecordId>();
    entry.mentor = m_mentor->chosen<PersonId>();
    entry.note = m_supervisedNote->text().trimmed().toStdString();
    QStringList lacks;
    if (!entry.record)
        lacks << SigningWords::riggingMissing();
    if (!entry.mentor)
        lacks << SigningWords::mentorMissing();
    sayIn(m_supervisedProblem, lacks.join(QLatin1Char(' ')));
    if (lacks.isEmpty())
        emit supervisedAsked(m_view.person, entry);
    else
        (entry.record ? m_mentor : m_rigging)->setFocus();
}

void SignOffPanel::sign(SignOffKind kind)
{
    SignOffEntry entry;
    entry.kind = kind;
    entry.signer = m_signer->chosen<PersonId>();
    const QString typed = m_day->text().trimmed();
    entry.day = parseDay(typed.toStdString());
    entry.months = m_months->value();
    entry.monthsWithoutRigging = m_rest->value();
    entry.note = m_note->text().trimmed().toStdString();
    QStringList lacks;
    if (!entry.signer)
        lacks << SigningWords::signerMissing();
    if (typed.isEmpty())
        lacks << SigningWords::dayMissing();
    else if (!entry.day)
        lacks << SigningWords::dayNotRead(typed);
    else if (*entry.day > m_view.today)
        lacks << SigningWords::dayToCome();
    if (kind == SignOffKind::Withdrawn && entry.note.empty())
        lacks << SigningWords::whyMissing();
    sayIn(m_signProblem, lacks.join(QLatin1Char(' ')));
    if (lacks.isEmpty())
        emit signAsked(m_view.person, entry);
    else if (!entry.signer)
        m_signer->setFocus();
    else
        m_day->line()->setFocus();
}

} // namespace rig
