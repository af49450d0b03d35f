#include "app/pages/rigged_today/paper_start.h"

#include "app/pages/day_read.h"
#include "app/pages/rigged_today/labelled_choice.h"
#include "app/widgets/person_note.h"
#include "app/widgets/wrapped.h"
#include "app/wording/day_words.h"
#include "app/wording/paper_words.h"
#include "app/wording/rigged_words.h"

#include <QCheckBox>
#include <QDateTime>
#include <QFormLayout>
#include <QLineEdit>
#include <QRadioButton>
#include <QVBoxLayout>

namespace rig {

namespace {

// As the clock on the wall showed it where this computer stands.
Moment momentOf(Day day, QTime time)
{
    const std::chrono::year_month_day date{day};
    const QDateTime local{QDate{static_cast<int>(date.year()),
                                static_cast<int>(static_cast<unsigned>(date.month())),
                                static_cast<int>(static_cast<unsigned>(date.day()))},
                          time};
    return {local.toSecsSinceEpoch(), local.offsetFromUtc()};
}

// 9:30, 9.30 and 0930 are the same time.
QTime timeTyped(const QString& text)
{
    for (const char* format : {"H:mm", "H.mm", "HHmm"})
        if (const QTime time = QTime::fromString(text, QLatin1String(format)); time.isValid())
            return time;
    return {};
}

} // namespace

PaperStart::PaperStart(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(28, 24, 28, 24);
    layout->setSpacing(12);
    layout->addWidget(labelOf(PaperWords::enterTitle(), "title"));
    layout->addWidget(labelOf(PaperWords::enterSentence(), "body"));
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_day = new QLineEdit;
    m_time = new QLineEdit;
    addRow(form, m_day, {"paperDay", PaperWords::dayOnPaper(), DayWords::example()})
        ->addWidget(new DayRead{m_day});
    addRow(form, m_time, {"paperTime", PaperWords::timeOnPaper(), PaperWords::timeHint()});
    m_first = addPerson(form, "paperFirst", PaperWords::firstOnPaper());
    m_second = addPerson(form, "paperSecond", PaperWords::secondOnPaper());
    m_typist = addPerson(form, "paperTypist", PaperWords::typist());
    connect(m_day, &QLineEdit::textChanged, this, &PaperStart::askStandings);
    layout->addLayout(form);
    layout->addWidget(labelOf(PaperWords::before(), "label"));
    m_apart = new QRadioButton{PaperWords::takenApartKey()};
    m_apart->setObjectName("paperApart");
    m_stood = new QRadioButton{PaperWords::stoodRiggedKey()};
    m_stood->setObjectName("paperStood");
    layout->addWidget(m_apart);
    layout->addWidget(m_stood);
    m_refused = labelOf({}, "caution", "paperRefused");
    m_refused->hide();
    layout->addWidget(m_refused);
    m_another = new WrapCheck{PaperWords::isAnother()};
    m_another->setObjectName("paperAnother");
    m_another->hide();
    layout->addWidget(m_another);
    auto* begin = buttonOf(PaperWords::beginToType(), "paperBegin", "primary");
    auto* back = buttonOf(PaperWords::back(), "paperBack");
    layout->addWidget(begin, 0, Qt::AlignLeft);
    layout->addWidget(back, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(begin, &QPushButton::clicked, this, &PaperStart::begin);
    connect(back, &QPushButton::clicked, this, &PaperStart::backAsked);
    // Of another day nobody has said yet whether it is another rigging.
    for (QLineEdit* line : {m_day, m_time})
        connect(line, &QLineEdit::textEdited, this, [this] { refuse({}, false); });
}

QVBoxLayout* PaperStart::addRow(QFormLayout* form, QLineEdit* line, const LineText& text)
{
    line->setObjectName(QLatin1String(text.name));
    line->setPlaceholderText(text.hint);
    line->setAccessibleName(withoutMnemonic(text.label));
    auto* column = new QVBoxLayout;
    column->setSpacing(3);
    column->addWidget(line);
    form->addRow(text.label, column);
    static_cast<QLabel*>(form->labelForField(column))->setBuddy(line);
    return column;
}

ChoiceBox* PaperStart::addPerson(QFormLayout* form, const char* name, const QString& label)
{
    auto* box = new ChoiceBox{withoutMnemonic(label)};
    box->setObjectName(QLatin1String(name));
    auto* note = new PersonNote{QByteArray{name}.append("Standing").constData()};
    QHBoxLayout* beside = besideEachOther(box, note);
    form->addRow(label, beside);
    static_cast<QLabel*>(form->labelForField(beside))->setBuddy(box);
    m_notes[box] = note;
    // What was refused is put right, and how they stood on that day is told beside the name.
    connect(box, &QComboBox::currentIndexChanged, this, [this] {
        if (m_another->isHidden()) // what it is about stays beside it
            sayIn(m_refused, {});
        showStandings();
    });
    return box;
}

// Nothing is told of anybody before the day stands there.
void PaperStart::askStandings()
{
    m_people.clear();
    if (const auto day = readDay(m_day->text()))
        emit standingsAsked(*day);
    showStandings();
}

void PaperStart::setStandings(const PersonStandings& people)
{
    m_people = people;
}

void PaperStart::showStandings()
{
    for (const auto& [box, note] : m_notes) {
        const auto person = box->chosen<PersonId>();
        const auto found = person && box != m_typist ? m_people.find(*person) : m_people.end();
        note->show(found == m_people.end() ? std::nullopt : std::optional{found->second});
    }
}

void PaperStart::setLook(const Look& look)
{
    for (const auto& [box, note] : m_notes)
        note->setLook(look);
}

void PaperStart::display(const RiggedTodayView& view)
{
    if (m_airframe != view.airframe.id)
        clear();
    m_airframe = view.airframe.id;
    for (ChoiceBox* box : {m_first, m_second, m_typist}) {
        const auto chosen = box->chosen<PersonId>();
        box->fill(RiggedWords::choosePerson(), view.persons);
        box->choose(chosen);
    }
}

void PaperStart::clear()
{
    m_day->clear();
    m_time->clear();
    for (ChoiceBox* box : {m_first, m_second, m_typist})
        box->choose(std::optional<PersonId>{});
    chooseNeither({m_apart, m_stood});
    refuse({}, false);
}

bool PaperStart::isBegun() const
{
    const auto isChosen = [](const ChoiceBox* box) { return box->chosen<PersonId>().has_value(); };
    return !m_day->text().isEmpty() || !m_time->text().isEmpty() || isChosen(m_first) || isChosen(m_second) ||
           isChosen(m_typist) || m_apart->isChecked() || m_stood->isChecked();
}

void PaperStart::focusFirst()
{
    m_day->setFocus();
}

void PaperStart::refuse(const QString& sentence, bool asksWhetherAnother)
{
    sayIn(m_refused, sentence);
    m_another->setVisible(asksWhetherAnother);
    if (asksWhetherAnother)
        m_another->setFocus();
    else
        m_another->setChecked(false);
}

std::optional<Moment> PaperStart::momentTyped()
{
    const QString dayText = m_day->text().trimmed();
    const auto day = readDay(dayText);
    if (!day) {
        refuse(dayText.isEmpty() ? PaperWords::dayMissing() : DayWords::unread(dayText), false);
        m_day->setFocus();
        return std::nullopt;
    }
    const QString timeText = m_time->text().trimmed();
    const QTime time = timeTyped(timeText);
    if (!time.isValid()) {
        refuse(timeText.isEmpty() ? PaperWords::timeMissing() : PaperWords::noTime(timeText), false);
        m_time->setFocus();
        return std::nullopt;
    }
    return momentOf(*day, time);
}

void PaperStart::begin()
{
    const auto begins = momentTyped();
    if (!begins)
        return;
    const auto missing = [this](const QString& sentence, QWidget* where) {
        sayIn(m_refused, sentence);
        where->setFocus();
    };
    const auto first = m_first->chosen<PersonId>();
    const auto second = m_second->chosen<PersonId>();
    const auto typist = m_typist->chosen<PersonId>();
    if (!first)
        return missing(PaperWords::firstMissing(), m_first);
    if (!second || *second == *first)
        return missing(second ? PaperWords::twoPeople() : PaperWords::secondMissing(), m_second);
    if (!typist)
        return missing(PaperWords::typistMissing(), m_typist);
    if (!m_apart->isChecked() && !m_stood->isChecked())
        return missing(PaperWords::beforeMissing(), m_apart);
    emit beginAsked({*begins, *typist, *first, *second,
                     m_stood->isChecked() ? RecordOrigin::Recheck : RecordOrigin::Rigging,
                     m_another->isChecked()});
}

bool PaperStart::takeKey(QKeyEvent* event)
{
    if (!isEnter(*event))
        return false;
    begin();
    return true;
}

} // namespace rig
