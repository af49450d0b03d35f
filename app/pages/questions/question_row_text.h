#pragma once

#include "app/pages/questions/questions_view.h"
#include "app/pictures/marks.h"

#include <QString>
#include <QStringList>

namespace rig {

// A question in words and marks, the same in the list and beside it.
MarkShape shapeOf(const QuestionRow& row);
Role shapeRoleOf(const QuestionRow& row);
QString titleOf(const QuestionRow& row);
QString stateOf(const QuestionRow& row);       // open since when, or closed when and by whom
QString detailOf(const QuestionRow& row);      // the same with the step or the reading it is about
QStringList storyOf(const QuestionRow& row);   // what, who, when, in which record; sentence by sentence
QString consequenceOf(const QuestionRow& row); // what closing it brings along; empty when nothing
QString resultOf(const QuestionRow& row, const Closed& closed);

} // namespace rig
