#include "app/widgets/person_note.h"

#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/wording/sign_off_words.h"

#include <QHBoxLayout>

namespace rig {

PersonNote::PersonNote(const char* objectName, QWidget* parent) : QWidget{parent}
{
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    m_mark = new MarkWidget;
    m_words = labelOf({}, "soft", objectName);
    row->addWidget(m_mark, 0, Qt::AlignVCenter);
    row->addWidget(m_words, 1);
    setToolTip(SignOffWords::why());
    hide();
}

void PersonNote::show(const std::optional<SignOffStanding>& standing, const QString& name)
{
    setVisible(standing.has_value());
    if (!standing)
        return m_words->clear();
    m_mark->show(MarkShape::Person, Role::Unknown);
    m_words->setText(name.isEmpty() ? SignOffWords::standing(*standing)
                                    : SignOffWords::named(name, *standing));
}

void PersonNote::setLook(const Look& look)
{
    m_mark->setLook(look);
}

} // namespace rig
