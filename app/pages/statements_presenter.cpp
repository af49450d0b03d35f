#include "app/pages/statements_presenter.h"

#include "app/wording/day_words.h"
#include "app/wording/formats.h"
#include "app/wording/statement_words.h"
#include "core/airframe/name_in.h"
#include "core/store/facts_book.h"
#include "core/store/records.h"

namespace rig {

namespace {

std::string typedText(const QString& typed)
{
    return typed.trimmed().toStdString();
}

std::optional<Day> dayIn(const StatementEntry& entry)
{
    return readDay(entry.day);
}

std::vector<StatementLack> statementLacks(const StatementEntry& entry, Day today)
{
    std::vector<StatementLack> lacks;
    if (!entry.person)
        lacks.push_back(StatementLack::Person);
    if (entry.said.trimmed().isEmpty())
        lacks.push_back(StatementLack::Said);
    if (entry.kind == StatementKind::Question)
        return lacks;
    if (!dayIn(entry))
        lacks.push_back(StatementLack::DayUnread);
    else if (*dayIn(entry) > today)
        lacks.push_back(StatementLack::DayAhead);
    if (entry.done.trimmed().isEmpty())
        lacks.push_back(StatementLack::Done);
    return lacks;
}

} // namespace

Result<StatementChoices> StatementsPresenter::choices(AirframeId airframe) const
{
    const auto known = m_records.book().withoutReadings(airframe);
    if (!known)
        return known.problem();
    return StatementChoices{known.value()->persons, known.value()->couplingsInUse()};
}

Result<StatementKept> StatementsPresenter::keep(const StatementEntry& entry)
{
    StatementKept kept;
    kept.lacks = statementLacks(entry, m_clock.now().localDay());
    if (!kept.isKept())
        return kept;
    const Outcome done =
        entry.kind == StatementKind::Finding ? keepFinding(entry, *dayIn(entry)) : keepQuestion(entry);
    if (!done)
        return done.problem();
    kept.sentence = sentenceOf(entry);
    return kept;
}

Outcome StatementsPresenter::keepFinding(const StatementEntry& entry, Day day)
{
    Event event;
    event.airframe = entry.airframe;
    event.coupling = entry.coupling;
    event.kind = EventKind::Finding;
    event.day = day;
    event.note = typedText(entry.said);
    event.done = typedText(entry.done);
    event.person = entry.person;
    event.stamp.by = entry.person;
    const auto added = m_records.add(event);
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

Outcome StatementsPresenter::keepQuestion(const StatementEntry& entry)
{
    Question question;
    question.airframe = entry.airframe;
    question.kind = QuestionKind::Asked;
    question.coupling = entry.coupling;
    question.reading = entry.reading;
    question.text = typedText(entry.said);
    question.stamp.by = entry.person;
    const auto added = m_records.add(question);
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

// It is kept; what cannot be read again now is not named.
QString StatementsPresenter::sentenceOf(const StatementEntry& entry) const
{
    QString person;
    QString place; // empty: the whole airframe
    if (const auto known = choices(entry.airframe)) {
        person = QString::fromStdString(nameIn(known.value().persons, entry.person));
        if (entry.coupling)
            place = QString::fromStdString(nameIn(known.value().couplings, entry.coupling));
    }
    return entry.kind == StatementKind::Finding
               ? StatementWords::findingKept(person, place, Formats{}.day(*dayIn(entry)))
               : StatementWords::questionKept(person, place);
}

} // namespace rig
