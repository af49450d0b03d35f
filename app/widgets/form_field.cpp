#include "app/widgets/form_field.h"

#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"

#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

void FormField::name(const QString& text) const
{
    label->setText(text);
    focus->setAccessibleName(withoutMnemonic(text));
}

bool FormField::lacksSomething() const
{
    return !problem->text().isEmpty();
}

FormField formField(QWidget* editor, QWidget* focus, const char* name, const QString& hint)
{
    FormField field;
    field.around = new QWidget;
    field.focus = focus;
    auto* inside = new QVBoxLayout{field.around};
    inside->setContentsMargins(0, 0, 0, 6);
    inside->setSpacing(3);
    field.label = labelOf({}, "label");
    field.label->setBuddy(focus);
    focus->setObjectName(QLatin1String(name));
    focus->setAccessibleDescription(hint);
    field.problem = labelOf({}, "problem");
    field.problem->setObjectName(QLatin1String(name) + QLatin1String("Problem"));
    field.problem->hide();
    inside->addWidget(field.label);
    inside->addWidget(editor);
    if (!hint.isEmpty())
        inside->addWidget(labelOf(hint, "soft"));
    inside->addWidget(field.problem);
    return field;
}

QPlainTextEdit* shortText()
{
    constexpr int kLines = 2;
    auto* edit = new QPlainTextEdit;
    edit->setTabChangesFocus(true);
    edit->setFixedHeight(kLines * edit->fontMetrics().lineSpacing() + 28);
    return edit;
}

void focusFirstLack(std::initializer_list<const FormField*> fields)
{
    const auto first = std::ranges::find_if(fields, &FormField::lacksSomething);
    if (first == fields.end())
        return;
    (*first)->focus->setFocus();
    for (QWidget* around = (*first)->around; around; around = around->parentWidget())
        if (auto* scroll = qobject_cast<FlowScroll*>(around))
            return scroll->bringIntoView((*first)->around);
}

} // namespace rig
