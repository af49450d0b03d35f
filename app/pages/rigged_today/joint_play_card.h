#pragma once

#include "core/rigging/joint_play.h"

#include <QFrame>

#include <optional>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace rig {

// Free play felt at the joint, both ways. It opens when it is asked for and takes nothing for granted.
class JointPlayCard : public QFrame
{
    Q_OBJECT

public:
    explicit JointPlayCard(QWidget* parent = nullptr);

    void open();
    // False when it was not open. What was typed goes.
    bool close();

signals:
    void keepAsked(const rig::PlayFound& along, const rig::PlayFound& across, const QString& note);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Way
    {
        QComboBox* felt = nullptr;
        QLineEdit* millimetres = nullptr;
    };

    Way addWay(QGridLayout* grid, const QString& label, const QString& measured, const char* name);
    std::optional<PlayFound> read(const Way& way, QString& problem) const;
    void keep();

    Way m_along;
    Way m_across;
    QLineEdit* m_note = nullptr;
    QLabel* m_problem = nullptr;
};

} // namespace rig
