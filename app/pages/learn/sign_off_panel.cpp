#include "app/pages/learn/sign_off_panel.h"

#include "app/pages/day_edit.h"
#include "app/pages/learn/labelled.h"
#include "app/widgets/announcer.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/still_box.h"
#include "app/widgets/wrapped.h"
#include "app/wording/day_words.h"
#include "app/wording/formats.h"
#include "app/wording/signing_words.h"
#include "core/lesson/spacing.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

QSpinBox* monthsOf(const char* name, int value)
{
    auto* box = new StillSpinBox;
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
    buildTakeBack(layout);
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
    m_rows->setTextFormat(Qt::RichText); // what was taken back is struck; the rest is escaped
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
    m_notNamed = labelOf({}, "caution", "supervisedNotNamed");
    m_wereThere = new WrapCheck{SigningWords::wereThere()};
    m_wereThere->setObjectName("supervisedWereThere");
    m_supervisedProblem = labelOf({}, "problem", "supervisedProblem");
    for (QWidget* one : std::initializer_list<QWidget*>{m_notNamed, m_wereThere, m_supervisedProblem}) {
        one->hide();
        grid->addWidget(one, grid->rowCount(), 0, 1, 2);
    }
    layout->addWidget(m_add);
    for (ChoiceBox* box : {m_rigging, m_mentor})
        connect(box, &QComboBox::activated, this, &SignOffPanel::showNotNamed);
    connect(keep, &QPushButton::clicked, this, &SignOffPanel::keepSupervised);
}

void SignOffPanel::buildTakeBack(QVBoxLayout* layout)
{
    m_take = new QWidget;
    auto* grid = new QGridLayout{m_take};
    grid->setContentsMargins(0, 0, 0, 0);
    m_takeWhich = new ChoiceBox{withoutMnemonic(SigningWords::toTakeBack())};
    m_takeWhich->setObjectName("takeBackWhich");
    m_takeWho = new ChoiceBox{withoutMnemonic(SigningWords::takenBackBy())};
    m_takeWho->setObjectName("takeBackWho");
    addLabelled(grid, 0, 0, SigningWords::toTakeBack(), m_takeWhich);
    addLabelled(grid, 0, 1, SigningWords::takenBackBy(), m_takeWho);
    auto* take = buttonOf(SigningWords::takeBack(), "takeBack");
    grid->addWidget(take, 2, 0, Qt::AlignLeft);
    m_takeProblem = labelOf({}, "problem", "takeBackProblem");
    m_takeProblem->hide();
    grid->addWidget(m_takeProblem, 3, 0, 1, 2);
    layout->addWidget(m_take);
    connect(take, &QPushButton::clicked, this, &SignOffPanel::takeBack);
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
    m_notMet = labelOf({}, "caution", "signNotMet");
    m_allTheSame = new WrapCheck{SigningWords::signAllTheSame()};
    m_allTheSame->setObjectName("signAllTheSame");
    layout->addWidget(m_notMet);
    layout->addWidget(m_allTheSame);
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
    connect(m_rest, &QSpinBox::valueChanged, this, &SignOffPanel::showNotMet);
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
    showRows();
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
    showNotNamed();
    showNotMet();
}

QString SignOffPanel::toldOf(const SupervisedRow& row) const
{
    return SigningWords::supervisedRow(Formats{}.day(row.day), nameOf(row.rigging.mentor),
                                       QString::fromStdString(row.rigging.note));
}

QString SignOffPanel::rowOf(const SupervisedRow& row) const
{
    const QString told = toldOf(row);
    QStringList missing;
    for (const PersonId person : row.notNamed)
        missing << nameOf(person);
    return missing.isEmpty() ? told : SigningWords::rowNotNamed(told, missing);
}

void SignOffPanel::showRows()
{
    QStringList rows;
    for (const SupervisedRow& row : m_view.supervised) {
        const QString told = rowOf(row).toHtmlEscaped();
        rows << (row.back ? SigningWords::takenBack(QStringLiteral("<s>%1</s>").arg(told),
                                                    nameOf(row.back->person).toHtmlEscaped(),
                                                    QString::fromStdString(row.back->reason).toHtmlEscaped())
                          : told);
    }
    m_rows->setText(rows.isEmpty() ? SigningWords::noneSupervised() : rows.join(QStringLiteral("<br>")));
}

QStringList SignOffPanel::notNamedIn() const
{
    const auto record = m_rigging->chosen<RecordId>();
    const auto mentor = m_mentor->chosen<PersonId>();
    const auto rigging =
        record ? std::ranges::find(m_view.riggings, *record, &RiggingChoice::record) : m_view.riggings.end();
    QStringList missing;
    if (rigging == m_view.riggings.end() || !mentor)
        return missing;
    for (const PersonId person : {m_view.person, *mentor})
        if (std::ranges::find(rigging->named, person) == rigging->named.end())
            missing << nameOf(person);
    return missing;
}

// A tick holds for the sentence beside which it was set.
void SignOffPanel::showNotNamed()
{
    const QStringList missing = notNamedIn();
    const QString says = missing.isEmpty() ? QString{} : SigningWords::notNamed(missing);
    if (m_notNamed->text() != says)
        m_wereThere->setChecked(false);
    sayIn(m_notNamed, says);
    m_wereThere->setVisible(!missing.isEmpty());
}

void SignOffPanel::showNotMet()
{
    const bool isLongAgo = isRefreshDue(m_view.lastRigging, m_view.today, m_rest->value());
    const QString says =
        SigningWords::notMet(m_view.progress.askedFor(),
                             isLongAgo ? std::optional{Formats{}.day(*m_view.lastRigging)} : std::nullopt);
    if (m_notMet->text() != says)
        m_allTheSame->setChecked(false);
    sayIn(m_notMet, says);
    m_allTheSame->setVisible(!says.isEmpty());
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
    std::vector<ChoiceBox::Entry> told;
    for (const SupervisedRow& row : m_view.supervised)
        if (!row.back)
            told.push_back(ChoiceBox::entry(toldOf(row), row.rigging.id));
    const auto which = m_takeWhich->chosen<SupervisedId>();
    const auto who = m_takeWho->chosen<PersonId>();
    m_takeWhich->fillWith(SigningWords::chooseToTakeBack(), told);
    m_takeWho->fill(SigningWords::chooseWhoTakesBack(), m_view.persons);
    m_takeWhich->choose(which);
    m_takeWho->choose(who);
    m_take->setVisible(!told.empty());
}

void SignOffPanel::clearTyped()
{
    for (ChoiceBox* box : {m_rigging, m_mentor, m_signer, m_takeWhich, m_takeWho})
        box->setCurrentIndex(0);
    for (QLineEdit* line : {m_supervisedNote, m_note})
        line->clear();
    m_day->setText({});
    m_months->setValue(kSignedForMonths);
    m_rest->setValue(kMonthsWithoutRigging);
    for (QLabel* label : {m_supervisedProblem, m_signProblem, m_takeProblem, m_kept})
        sayAloud(label, {});
    m_allTheSame->setChecked(false);
    showNotNamed();
}

void SignOffPanel::showKept(const QString& sentence)
{
    clearTyped();
    tellKept(sentence);
}

void SignOffPanel::showTakenBack(const QString& sentence)
{
    m_takeWho->setCurrentIndex(0);
    tellKept(sentence);
}

void SignOffPanel::tellKept(const QString& sentence)
{
    sayAloud(m_kept, sentence);
    emit said(m_kept);
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
    if (const QStringList missing = notNamedIn();
        !missing.isEmpty() && (!m_wereThere->isChecked() || entry.note.empty()))
        lacks << SigningWords::wereThereMissing(missing);
    sayIn(m_supervisedProblem, lacks.join(QLatin1Char(' ')));
    if (lacks.isEmpty())
        emit supervisedAsked(m_view.person, entry);
    else if (entry.record && entry.mentor)
        m_wereThere->setFocus();
    else
        (entry.record ? m_mentor : m_rigging)->setFocus();
    if (!lacks.isEmpty())
        emit said(m_supervisedProblem);
}

void SignOffPanel::takeBack()
{
    const auto which = m_takeWhich->chosen<SupervisedId>();
    const auto who = m_takeWho->chosen<PersonId>();
    QStringList lacks;
    if (!which)
        lacks << SigningWords::toTakeBackMissing();
    if (!who)
        lacks << SigningWords::whoTakesBackMissing();
    sayIn(m_takeProblem, lacks.join(QLatin1Char(' ')));
    if (lacks.isEmpty())
        emit takeBackAsked(*which, *who, m_takeWhich->currentText());
    else
        (which ? m_takeWho : m_takeWhich)->setFocus();
    if (!lacks.isEmpty())
        emit said(m_takeProblem);
}

void SignOffPanel::sign(SignOffKind kind)
{
    SignOffEntry entry;
    entry.kind = kind;
    entry.signer = m_signer->chosen<PersonId>();
    const QString typed = m_day->text().trimmed();
    entry.day = readDay(typed);
    entry.months = m_months->value();
    entry.monthsWithoutRigging = m_rest->value();
    entry.note = m_note->text().trimmed().toStdString();
    QStringList lacks;
    if (!entry.signer)
        lacks << SigningWords::signerMissing();
    if (typed.isEmpty())
        lacks << SigningWords::dayMissing();
    else if (!entry.day)
        lacks << DayWords::unread(typed);
    else if (*entry.day > m_view.today)
        lacks << SigningWords::dayToCome();
    if (kind == SignOffKind::Withdrawn && entry.note.empty())
        lacks << SigningWords::whyMissing();
    entry.askedFor = m_view.progress.askedFor();
    const bool isLacking = kind == SignOffKind::Signed && !m_notMet->text().isEmpty();
    if (lacks.isEmpty() && isLacking && !m_allTheSame->isChecked())
        lacks << SigningWords::signAllTheSameMissing();
    sayIn(m_signProblem, lacks.join(QLatin1Char(' ')));
    if (lacks.isEmpty())
        emit signAsked(m_view.person, entry);
    else if (!entry.signer)
        m_signer->setFocus();
    else if (isLacking && entry.day && *entry.day <= m_view.today)
        m_allTheSame->setFocus();
    else
        m_day->line()->setFocus();
    if (!lacks.isEmpty())
        emit said(m_signProblem);
}

} // namespace rig
