#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/rigged_today/rigging_writer.h"
#include "app/pages/rigged_today/stop_card.h"

#include <QString>

#include <vector>

namespace rig {

// Names the reading: it may not be on the screen.
QString correctQuestionOf(const Reading& wrong, const std::vector<Person>& persons);

// Where going on leads, as the button says it.
QString onwardText(const RecordPlace& place);

// What to do at a stop, at a joint or in the control check: now, or what is to be said of it where the
// rigging is one of a day gone by. `todo`: what else to do now.
StopAdvice stopAdvice(const RiggedTodayView& view, const QString& todo = {});

// Left and right by different hands, where two are there: said before the look, and never more than said.
// Empty when there is nothing to say.
QString otherHandsHint(const CouplingSheet& sheet, const std::vector<Person>& persons);

// Why a rigging from paper cannot begin like this; empty: it can. `isAnother`: somebody says that it is not
// the one that stands on that day already.
QString refusalOf(const RiggedTodayPresenter::PaperFinding& finding, bool isAnother);

// What a reading that was just kept says together with others; empty when nothing.
QString newsText(const ReadingNews& news);

} // namespace rig
