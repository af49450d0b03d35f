#include "app/widgets/row_list.h"

#include "app/widgets/mark_row.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

RowList::RowList(const char* name, const QString& accessibleName, QWidget* parent)
    : QWidget{parent}, m_name{QLatin1String(name)}
{
    setAccessibleName(accessibleName);
    m_layout = new QVBoxLayout{this};
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(2);
}

void RowList::setLook(const Look& look)
{
    m_look = look;
    for (MarkRow* one : m_rows)
        one->setLook(look);
}

MarkRow* RowList::row(std::size_t index)
{
    while (m_rows.size() <= index) {
        auto* one = new MarkRow;
        const int at = static_cast<int>(m_rows.size());
        one->setObjectName(m_name + QString::number(at));
        one->setLook(m_look);
        if (m_wraps)
            one->setWraps();
        one->installEventFilter(this);
        connect(one, &MarkRow::clicked, this, [this, at] { chooseByUser(at); });
        m_layout->addWidget(one);
        m_rows.push_back(one);
    }
    return m_rows[index];
}

void RowList::display(const std::vector<RowText>& rows)
{
    m_count = static_cast<int>(rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i)
        row(i)->show(rows[i].shape, rows[i].role, rows[i].title, rows[i].detail);
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i]->setVisible(i < rows.size());
    choose(m_chosen);
    setVisible(m_count > 0);
}

void RowList::choose(int index)
{
    const bool focused = m_chosen >= 0 && m_rows[static_cast<std::size_t>(m_chosen)]->hasFocus();
    m_chosen = m_count == 0 ? -1 : std::clamp(index, 0, m_count - 1);
    for (int i = 0; i < static_cast<int>(m_rows.size()); ++i) {
        MarkRow* one = m_rows[static_cast<std::size_t>(i)];
        one->setChecked(i == m_chosen);
        one->setFocusPolicy(i == m_chosen ? Qt::StrongFocus : Qt::ClickFocus);
    }
    if (focused)
        focusChosen();
}

void RowList::chooseByUser(int index)
{
    choose(index);
    emit rowChosen(m_chosen);
}

void RowList::focusChosen()
{
    if (m_chosen >= 0)
        m_rows[static_cast<std::size_t>(m_chosen)]->setFocus();
}

bool RowList::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::MouseButtonDblClick) {
        emit rowOpened(m_chosen);
        return true;
    }
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->modifiers() & (Qt::AltModifier | Qt::ControlModifier)) {
        event->ignore(); // for the panel around; a button by itself would take an arrow as the way to the
                         // next one
        return true;
    }
    const auto go = [this](int index) {
        chooseByUser(index);
        return true;
    };
    switch (key->key()) {
    case Qt::Key_Up:
        return go(m_chosen - 1);
    case Qt::Key_Down:
        return go(m_chosen + 1);
    case Qt::Key_Home:
        return go(0);
    case Qt::Key_End:
        return go(m_count - 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit rowOpened(m_chosen);
        return true;
    default:
        return QWidget::eventFilter(watched, event);
    }
}

} // namespace rig
