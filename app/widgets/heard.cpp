#include "app/widgets/heard.h"

#include "app/widgets/figure_label.h"

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

// What is typed, read only: the page around takes the keys.
class HeardFigure : public QAccessibleWidget, public QAccessibleTextInterface
{
public:
    explicit HeardFigure(FigureLabel* figure) : QAccessibleWidget{figure, QAccessible::EditableText} {}

    QString text(QAccessible::Text which) const override
    {
        return which == QAccessible::Value ? figure() : QAccessibleWidget::text(which);
    }
    QAccessible::State state() const override
    {
        QAccessible::State state = QAccessibleWidget::state();
        state.readOnly = true;
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType kind) override
    {
        return kind == QAccessible::TextInterface ? static_cast<QAccessibleTextInterface*>(this)
                                                  : QAccessibleWidget::interface_cast(kind);
    }

    void selection(int, int* from, int* to) const override { *from = *to = 0; }
    int selectionCount() const override { return 0; }
    void addSelection(int, int) override {}
    void removeSelection(int) override {}
    void setSelection(int, int, int) override {}
    int cursorPosition() const override { return characterCount(); }
    void setCursorPosition(int) override {}
    QString text(int from, int to) const override { return figure().mid(from, to - from); }
    int characterCount() const override { return static_cast<int>(figure().size()); }
    QRect characterRect(int) const override { return rect(); }
    int offsetAtPoint(const QPoint&) const override { return -1; }
    void scrollToSubstring(int, int) override {}
    QString attributes(int, int* from, int* to) const override
    {
        *from = 0;
        *to = characterCount();
        return {};
    }

private:
    const QString& figure() const { return static_cast<FigureLabel*>(widget())->figure(); }
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
    if (kind == QLatin1String("rig::FigureLabel"))
        return new HeardFigure{static_cast<FigureLabel*>(object)};
    if (kind == QLatin1String("rig::ChartWidget"))
        return new QAccessibleWidget{widget, QAccessible::Chart};
    if (std::ranges::any_of(kPictures, [&](const char* one) { return kind == QLatin1String(one); }))
        return new QAccessibleWidget{widget, QAccessible::Graphic};
    if (kind == QLatin1String("rig::Announcer")) // read when it comes; an alert only where it has a window
        return new QAccessibleWidget{widget, QAccessible::Notification};
    return nullptr;
}

} // namespace

void hearWhatIsPainted()
{
    QAccessible::installFactory(heard);
}

} // namespace rig
