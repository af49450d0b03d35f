#include "app/pages/paper_box.h"

#include "app/wording/paper_words.h"

#include <QLocale>

namespace rig {

namespace {

QString paperName(Paper paper)
{
    switch (paper) {
    case Paper::A4:
        return PaperWords::a4();
    case Paper::Letter:
        return PaperWords::letter();
    case Paper::A5:
        break;
    }
    return PaperWords::a5();
}

} // namespace

PaperBox::PaperBox(const char* objectName, const QString& accessibleName, std::initializer_list<Paper> papers)
{
    setObjectName(QLatin1String(objectName));
    setAccessibleName(accessibleName);
    setAccessibleDescription(accessibleName); // no label says it
    for (const Paper paper : papers)
        addItem(paperName(paper), static_cast<int>(paper));
    setCurrentIndex(findData(static_cast<int>(usualPaper(QLocale::system()))));
}

Paper PaperBox::paper() const
{
    return static_cast<Paper>(currentData().toInt());
}

} // namespace rig
