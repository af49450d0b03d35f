#include "app/widgets/heard.h"

#include <QAbstractButton>
#include <QAccessibleWidget>

#include <algorithm>
#include <array>

namespace rig {

namespace {

// A painted button. Qt hears only those of its own kinds as buttons.
class HeardButton : public QAccessibleWidget
{
public:
    explicit HeardButton(QAbstractButton* button)
        : QAccessibleWidget{button, button->isCheckable() ? QAccessible::RadioButton : QAccessible::Button}
    {
    }

    QString text(QAccessible::Text which) const override
    {
        const QString detail = widget()->accessibleDescription();
        if (which == QAccessible::Description)
            return {}; // it is in the name
        const QString text = QAccessibleWidget::text(which);
        return which == QAccessible::Name && !detail.isEmpty() ? text + QLatin1String(", ") + detail : text;
    }

    QAccessible::State state() const override
    {
        QAccessible::State state = QAccessibleWidget::state();
        state.checkable = button()->isCheckable();
        state.checked = button()->isChecked();
        state.pressed = button()->isDown();
        return state;
    }

    QStringList actionNames() const override
    {
        QStringList names = QAccessibleWidget::actionNames();
        if (widget()->isEnabled())
            names.prepend(pressAction());
        return names;
    }

    void doAction(const QString& name) override
    {
        if (name == pressAction() && widget()->isEnabled())
            button()->click();
        else
            QAccessibleWidget::doAction(name);
    }

private:
    QAbstractButton* button() const { return static_cast<QAbstractButton*>(widget()); }
};

constexpr std::array kPictures{"rig::PictureWidget", "rig::GapStripWidget", "rig::PlanWidget"};

QAccessibleInterface* heard(const QString& kind, QObject* object)
{
    auto* widget = qobject_cast<QWidget*>(object);
    if (!widget)
        return nullptr;
    if (kind ==
        QLatin1String("QAbstractButton")) // none of Qt's own, which are asked for by their names first
        return new HeardButton{static_cast<QAbstractButton*>(object)};
    if (kind == QLatin1String("rig::ChartWidget"))
        return new QAccessibleWidget{widget, QAccessible::Chart};
    if (std::ranges::any_of(kPictures, [&](const char* one) { return kind == QLatin1String(one); }))
        return new QAccessibleWidget{widget, QAccessible::Graphic};
    return nullptr;
}

} // namespace

void hearWhatIsPainted()
{
    QAccessible::installFactory(heard);
}

} // namespace rig
