#pragma once

#include "app/pictures/marks.h"
#include "app/theme/theme.h"

#include <QWidget>

namespace rig {

// One verdict mark. Always beside the word, so it stays silent for screen readers.
class MarkWidget : public QWidget
{
    Q_OBJECT

public:
    explicit MarkWidget(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void show(MarkShape shape, Role role);
    void show(Verdict verdict) { show(shapeOf(verdict), shapeRoleOf(verdict)); }
    void show(Says says) { show(shapeOf(says), shapeRoleOf(says)); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Look m_look;
    MarkShape m_shape = MarkShape::Waiting;
    Role m_role = Role::InkSoft;
};

} // namespace rig
