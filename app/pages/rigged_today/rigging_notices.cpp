#include "app/pages/rigged_today/rigging_notices.h"

#include "app/wording/connected_words.h"
#include "app/wording/control_words.h"
#include "app/wording/formats.h"
#include "app/wording/paper_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/stop_words.h"
#include "core/airframe/name_in.h"

#include <algorithm>

namespace rig {

QString correctQuestionOf(const Reading& wrong, const std::vector<Person>& persons)
{
    const Formats formats;
    return RiggedWords::correctQuestion(
        {formats.interval(wrong.interval), formats.time(wrong.stamp.when),
         QString::fromStdString(nameIn(persons, std::optional{wrong.person}))});
}

QString onwardText(const RecordPlace& place)
{
    switch (place.kind) {
    case RecordPlace::Kind::ControlCheck:
        return ControlWords::goHere();
    case RecordPlace::Kind::SecondInspection:
        return RiggedWords::goToSecond();
    case RecordPlace::Kind::Close:
        return RiggedWords::goToClose();
    case RecordPlace::Kind::Connected:
        return ConnectedWords::goThere();
    case RecordPlace::Kind::Coupling:
    case RecordPlace::Kind::Season:
    case RecordPlace::Kind::Summary:
    case RecordPlace::Kind::Paper:
        break;
    }
    return RiggedWords::nextCoupling();
}

StopAdvice stopAdvice(const RiggedTodayView& view, const QString& todo)
{
    const QString name = QString::fromStdString(view.airframe.callName);
    const QString phone = QString::fromStdString(view.airframe.callPhone);
    if (view.record && view.record->isOfEarlierPaper)
        return {StopWords::onPaper(Formats{}.day(view.record->begins.localDay())),
                StopWords::unlessResolved(name, phone)};
    return {ControlWords::leaveAndCall(name, phone), todo};
}

QString otherHandsHint(const CouplingSheet& sheet, const std::vector<Person>& persons)
{
    if (!sheet.person || sheet.flow.begun || sheet.turn == Turn::Second ||
        std::ranges::find(sheet.otherSidePersons, *sheet.person) == sheet.otherSidePersons.end())
        return {};
    const auto who = std::ranges::find(persons, *sheet.person, &Person::id);
    if (who == persons.end())
        return {};
    return RiggedWords::otherHandsSuggested(QString::fromStdString(who->name),
                                            QString::fromStdString(sheet.otherSide->name));
}

QString refusalOf(const RiggedTodayPresenter::PaperFinding& finding, bool isAnother)
{
    switch (finding.finding) {
    case PaperMoment::Finding::ToCome:
        return PaperWords::dayToCome();
    case PaperMoment::Finding::BeforeFirstFitting:
        return PaperWords::beforeFirstFitting(Formats{}.day(finding.first));
    case PaperMoment::Finding::RiggedThatDay:
        if (!isAnother)
            return PaperWords::riggedThatDay(Formats{}.whenBegun(finding.other),
                                             QString::fromStdString(finding.otherLeader));
        break;
    case PaperMoment::Finding::Possible:
        break;
    }
    return {};
}

QString newsText(const ReadingNews& news)
{
    if (news.looksLike)
        return RiggedWords::looksSwapped(QString::fromStdString(news.looksLike->name));
    if (!news.pair)
        return {};
    if (news.isSameInterval)
        return RiggedWords::readingsAreSame();
    const Formats formats;
    const QString apart = formats.millimetres(news.pair->smallestDifference);
    const QString limit = formats.millimetres(news.spread.limit());
    switch (news.pair->verdict) {
    case numbers::PairVerdict::Agree:
        return RiggedWords::readingsAgree(apart, limit);
    case numbers::PairVerdict::Disagree:
        return RiggedWords::readingsDisagree(apart, limit, news.spread.pairs);
    case numbers::PairVerdict::Unresolved:
        break;
    }
    return RiggedWords::readingsUnresolved(limit);
}

} // namespace rig
