#include "app/pages/setup/panel_parts.h"

#include <QLabel>
#include <QPushButton>
#include <QStyle>

#include <algorithm>

namespace rig {

namespace {

constexpr int kGap = 8;

// Lines of items from the left, as many as fit.
class FlowLayout : public QLayout
{
public:
    ~FlowLayout() override
    {
        while (QLayoutItem* item = FlowLayout::takeAt(0))
            delete item;
    }

    void addItem(QLayoutItem* item) override { m_items.push_back(item); }
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override
    {
        return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
    }
    QLayoutItem* takeAt(int index) override
    {
        QLayoutItem* item = itemAt(index);
        if (item)
            m_items.erase(m_items.begin() + index);
        return item;
    }
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return place({0, 0, width, 0}, false); }
    void setGeometry(const QRect& rect) override
    {
        QLayout::setGeometry(rect);
        place(rect, true);
    }
    QSize sizeHint() const override { return minimumSize(); }
    QSize minimumSize() const override
    {
        QSize size;
        for (QLayoutItem* item : m_items)
            size = size.expandedTo(item->minimumSize());
        return size;
    }

private:
    int place(const QRect& rect, bool move) const
    {
        int x = rect.x();
        int y = rect.y();
        int line = 0;
        for (QLayoutItem* item : m_items) {
            if (item->isEmpty())
                continue;
            const QSize size = item->sizeHint();
            if (x > rect.x() && x + size.width() > rect.right() + 1) {
                x = rect.x();
                y += line + kGap;
                line = 0;
            }
            if (move)
                item->setGeometry({QPoint{x, y}, size});
            x += size.width() + kGap;
            line = std::max(line, size.height());
        }
        return y + line - rect.y();
    }

    std::vector<QLayoutItem*> m_items;
};

} // namespace

QLabel* softLabel(const QString& text)
{
    auto* label = new QLabel{text};
    label->setProperty("kind", "soft");
    label->setWordWrap(true);
    return label;
}

QPushButton* panelButton(const char* name, const QString& text)
{
    auto* button = new QPushButton{text};
    button->setObjectName(QLatin1String(name));
    button->setAutoDefault(true);
    return button;
}

void setPrimary(QPushButton* button, bool primary)
{
    button->setProperty("kind", primary ? "primary" : "plain");
    button->style()->unpolish(button);
    button->style()->polish(button);
}

ButtonFlow::ButtonFlow(const std::vector<QPushButton*>& buttons, QWidget* parent) : QWidget{parent}
{
    auto* layout = new FlowLayout;
    layout->setContentsMargins(0, 0, 0, 0);
    setLayout(layout);
    for (QPushButton* button : buttons)
        layout->addWidget(button);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

} // namespace rig
