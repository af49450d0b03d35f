#pragma once

#include "app/pictures/marks.h"
#include "app/theme/theme.h"

#include <QAbstractButton>

namespace rig {

// One row: a mark, a title, a detail below it. The words say what the mark says.
class MarkRow : public QAbstractButton
{
    Q_OBJECT

public:
    explicit MarkRow(QWidget* parent = nullptr);

    void show(MarkShape shape, Role role, const QString& title, const QString& detail);
    void setLook(const Look& look);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override; // Enter goes there, as Space does

private:
    Look m_look;
    MarkShape m_shape = MarkShape::Waiting;
    Role m_role = Role::InkSoft;
    QString m_title;
    QString m_detail;
};

} // namespace rig
