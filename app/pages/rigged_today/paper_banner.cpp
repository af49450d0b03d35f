#include "app/pages/rigged_today/paper_banner.h"

#include "app/widgets/parts.h"
#include "app/wording/formats.h"
#include "app/wording/paper_words.h"
#include "core/airframe/name_in.h"

#include <QCheckBox>
#include <QVBoxLayout>

namespace rig {

PaperBanner::PaperBanner(QWidget* parent) : QWidget{parent}
{
    setObjectName("paperBanner");
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(28, 10, 28, 4);
    layout->setSpacing(4);
    m_text = labelOf({}, "caution", "paperBannerText");
    m_secondTypes = new QCheckBox{PaperWords::secondTypes()};
    m_secondTypes->setObjectName("secondTypes");
    m_secondTypes->setFocusPolicy(Qt::TabFocus);
    layout->addWidget(m_text);
    layout->addWidget(m_secondTypes);
    connect(m_secondTypes, &QCheckBox::clicked, this, &PaperBanner::secondTypesChosen);
    hide();
}

void PaperBanner::display(const RiggedTodayView& view, const RiggingSession& session)
{
    const bool isFromPaper = view.now && view.record->enteredBy;
    setVisible(isFromPaper);
    if (!isFromPaper)
        return;
    const QString typist = QString::fromStdString(nameIn(view.persons, view.record->enteredBy));
    const bool isSecond = session.turn == Turn::Second;
    const QString day = Formats{}.day(view.record->begins.localDay());
    const bool isCopied = copiedBy(session, *view.now, session.second).has_value();
    m_text->setText(!isSecond  ? PaperWords::banner(day)
                    : isCopied ? PaperWords::bannerCopied(day, typist)
                               : PaperWords::bannerOwn(day));
    m_secondTypes->setVisible(isSecond && session.second != view.record->enteredBy);
    m_secondTypes->setChecked(session.secondTypes);
}

void PaperBanner::press()
{
    if (m_secondTypes->isVisible())
        m_secondTypes->click();
}

} // namespace rig
